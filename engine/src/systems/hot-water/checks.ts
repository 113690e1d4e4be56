import { look, OUT_AND_BACK, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { HotWaterSpec } from "./spec.ts";

export const checks: SystemChecks<HotWaterSpec> = {
  checks: (spec) => [
    look("hotWater.atTap", TURNAROUND, "inside"),
    ...(spec.frostValveC > 0
      ? [look("hotWater.frostValve", OUT_AND_BACK, "inside", { part: "hotWater.frostValve" })]
      : []),
  ],
};
