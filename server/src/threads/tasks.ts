import {
  type AllocationInput,
  calibrateRates,
  compareUse,
  forecastTrip,
  judgeReturns,
  proposeAllocation,
  type Reading,
  reforecastTrip,
  type TripInput,
} from "@setfair/engine";
import { drawPdf } from "../papers/draw-pdf.ts";

/**
 * What takes long enough to hold others up. Each takes and gives plain data only, since that is what goes from one
 * thread to another; none reads the store.
 */
export const TASKS = {
  /** A trip lived, with what the panel showed on the way. */
  forecast: (input: TripInput, readings: readonly Reading[]) =>
    readings.length === 0 ? forecastTrip(input) : reforecastTrip(input, readings),
  compareUse,
  calibrateRates,
  judgeReturns,
  /** Seats hires on vehicles for so many seconds at most. */
  allocate: (input: AllocationInput, seconds: number) => {
    const begun = performance.now();
    return proposeAllocation(input, { seconds, elapsedMs: () => performance.now() - begun });
  },
  drawPdf,
} as const;

export type Tasks = typeof TASKS;
export type TaskName = keyof Tasks;
