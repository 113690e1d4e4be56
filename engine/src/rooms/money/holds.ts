import type { IsoDate } from "../../base/time.ts";
import { addDays, daysBetween } from "../../base/years.ts";
import { addWorkingDays } from "../settlement/settle-hire.ts";
import type { Holding } from "./types.ts";

/** A hold on a card and how long it stands. */
export interface HoldLife {
  readonly id: string;
  readonly pence: number;
  readonly on: IsoDate;
  /** last day on which it stands */
  readonly standsTo: IsoDate;
  /** last day on which the deposit is needed */
  readonly neededTo: IsoDate;
  readonly state: "stands" | "lapsesBefore" | "lapsed";
  /** days from today to the last day; negative where it is over */
  readonly daysLeft: number;
}
export interface HoldInput {
  readonly holdings: readonly Holding[];
  readonly to: IsoDate;
  readonly today: IsoDate;
  /** days for which a hold on a card stands, by the terms */
  readonly authorisationDays: number;
  /** working days after the return by which the deposit goes back */
  readonly releaseWorkingDays: number;
}

/** Each hold that is still open: whether it stands until the deposit goes back, lapses before, or has lapsed. */
export function lifeOfHolds(input: HoldInput): readonly HoldLife[] {
  const neededTo = addWorkingDays(input.to, input.releaseWorkingDays);
  return input.holdings
    .filter(({ isHold, remaining }) => isHold && remaining > 0)
    .map(({ id, remaining, on }) => {
      const standsTo = addDays(on, input.authorisationDays);
      const daysLeft = daysBetween(input.today, standsTo);
      const state = daysLeft < 0 ? "lapsed" : standsTo < neededTo ? "lapsesBefore" : "stands";
      return { id, pence: remaining, on, standsTo, neededTo, state, daysLeft };
    });
}
