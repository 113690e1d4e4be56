import { look, OUT_AND_BACK, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { LightsSpec } from "./spec.ts";

export const checks: SystemChecks<LightsSpec> = {
  checks: () => [
    look("lights.allWork", TURNAROUND, "inside"),
    look("lights.panel", OUT_AND_BACK, "inside", { part: "lights.panel", photograph: true }),
    look("lights.road", ["out", "turnaround"], "rear"),
  ],
};
