import { look, OUT_AND_BACK, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { SolarSpec } from "./spec.ts";

export const checks: SystemChecks<SolarSpec> = {
  checks: () => [
    look("solar.panel", OUT_AND_BACK, "roof", { part: "solar.panel", photograph: true, charge: "damage" }),
    look("solar.gives", TURNAROUND, "inside"),
  ],
};
