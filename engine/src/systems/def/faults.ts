import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { DefSpec } from "./spec.ts";

export const faults: SystemFaults<DefSpec> = {
  symptoms: () => [
    {
      id: "def.lightOn",
      dangerous: false,
      causes: [
        cause("def.low", 5, { store: "def", times: 5 }),
        cause("def.notYetSeen", 2),
        cause("def.sensor", 1),
      ],
      checks: [
        tryThis("def.topUp", ["def.low"], 15, 1),
        tryThis("def.driveTwenty", ["def.notYetSeen"], 20, 0, { after: ["def.topUp"] }),
        tryThis("def.readCodes", ["def.sensor"], 30, 2),
      ],
    },
  ],
};
