import { look, OUT_AND_BACK, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { StepSpec } from "./spec.ts";

export const checks: SystemChecks<StepSpec> = {
  checks: (spec) => [
    look("step.step", OUT_AND_BACK, spec.side, { part: "step.step", photograph: true, charge: "damage" }),
    ...(spec.door
      ? [
          look("step.door", OUT_AND_BACK, spec.side, {
            part: "step.door",
            photograph: true,
            charge: "damage",
          }),
        ]
      : []),
    look("step.cyclesTwice", TURNAROUND, spec.side, { part: "step.step" }),
  ],
};
