import { countOf, look, OUT_AND_BACK, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { SeatsBeltsSpec } from "./spec.ts";

export const checks: SystemChecks<SeatsBeltsSpec> = {
  checks: (spec) => [
    countOf("seatsBelts.beltsLock", TURNAROUND, "inside", spec.beltedSeats),
    look("seatsBelts.upholstery", OUT_AND_BACK, "inside", { photograph: true, charge: "cleaning" }),
    ...(spec.swivel ? [look("seatsBelts.swivelLocks", TURNAROUND, "cab", { part: "seatsBelts.front" })] : []),
  ],
};
