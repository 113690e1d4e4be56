import { DEFAULT_LEAD_TIMES, USUAL_JOB_MINUTES } from "@setfair/engine";
import type { DepotDocument, DepotTimes } from "./documents.ts";

/** Until the depot enters its own (common practice, no source). */
export const USUAL_TIMES: DepotTimes = {
  handOverMinutes: 60,
  takeBackMinutes: 30,
  demonstrationMinutes: { first: 75, some: 45, knowsThisVehicle: 30 },
  jobMinutes: USUAL_JOB_MINUTES,
  leadHours: DEFAULT_LEAD_TIMES,
};

/** How long things take at this depot and when gates fall due; the usual where it entered nothing. */
export const timesOf = ({ times }: Pick<DepotDocument, "times">): DepotTimes =>
  times === undefined
    ? USUAL_TIMES
    : { ...USUAL_TIMES, ...times, jobMinutes: { ...USUAL_TIMES.jobMinutes, ...times.jobMinutes } };
