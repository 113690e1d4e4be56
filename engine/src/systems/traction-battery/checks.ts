import { countOf, look, OUT_AND_BACK, read, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { TractionBatterySpec } from "./spec.ts";

const PERCENT = { unit: "%", min: 0, max: 100, tolerance: 2, step: 1, source: "practice" } as const;

export const checks: SystemChecks<TractionBatterySpec> = {
  checks: (spec) => [
    read("tractionBattery.charge", OUT_AND_BACK, "cab", PERCENT, { photograph: true, charge: "fuel" }),
    look("tractionBattery.inlet", OUT_AND_BACK, spec.side, {
      part: "tractionBattery.inlet",
      photograph: true,
      charge: "damage",
    }),
    countOf("tractionBattery.leads", OUT_AND_BACK, "rear", spec.postChargeA > 0 ? 2 : 1, {
      charge: "missingItem",
    }),
    look("tractionBattery.charges", TURNAROUND, spec.side, { part: "tractionBattery.inlet" }),
  ],
};
