import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { StepSpec } from "./spec.ts";

export const faults: SystemFaults<StepSpec> = {
  symptoms: (spec) => [
    {
      id: "step.stuckOut",
      dangerous: false,
      causes: [
        cause("step.grit", 4),
        ...(spec.electric
          ? [cause("step.noPower", 2, { store: "battery12", times: 3 }), cause("step.switchOrFuse", 2)]
          : []),
      ],
      checks: [
        tryThis("step.brushOff", ["step.grit"], 5, 1),
        ...(spec.electric
          ? [
              tryThis("step.engineOn", ["step.noPower"], 2, 0),
              tryThis("step.pushHome", ["step.switchOrFuse"], 5, 1, { after: ["step.engineOn"] }),
            ]
          : []),
      ],
    },
  ],
};
