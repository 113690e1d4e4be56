import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { AwningSpec } from "./spec.ts";

export const faults: SystemFaults<AwningSpec> = {
  symptoms: () => [
    {
      id: "awning.willNotClose",
      dangerous: false,
      causes: [
        cause("awning.sags", 3),
        cause("awning.debris", 2),
        cause("awning.legNotHome", 2),
        cause("awning.armBent", 1),
      ],
      checks: [
        tryThis("awning.liftMiddle", ["awning.sags"], 3, 1),
        tryThis("awning.brushOff", ["awning.debris"], 5, 0),
        tryThis("awning.legsHome", ["awning.legNotHome"], 3, 1),
        tryThis("awning.compareArms", ["awning.armBent"], 2, 0),
        tryThis("awning.handBack", ["awning.armBent"], 20, 2, { after: ["awning.compareArms"] }),
      ],
    },
  ],
};
