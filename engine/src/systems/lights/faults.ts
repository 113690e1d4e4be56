import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { LightsSpec } from "./spec.ts";

export const faults: SystemFaults<LightsSpec> = {
  symptoms: () => [
    {
      id: "lights.dimOrOut",
      dangerous: false,
      causes: [
        cause("lights.masterOff", 4),
        cause("lights.batteryLow", 4, { store: "battery12", times: 5 }),
        cause("lights.fuse", 1),
      ],
      checks: [
        tryThis("lights.pressMain", ["lights.masterOff"], 1, 0),
        tryThis("lights.readBattery", ["lights.batteryLow"], 1, 0, { mentions: ["leisureBattery"] }),
        tryThis("lights.changeFuse", ["lights.fuse"], 10, 2),
      ],
    },
  ],
};
