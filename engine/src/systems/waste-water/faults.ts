import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { WasteWaterSpec } from "./spec.ts";

export const faults: SystemFaults<WasteWaterSpec> = {
  symptoms: (spec) => [
    {
      id: "wasteWater.willNotEmpty",
      dangerous: false,
      causes: [
        cause("wasteWater.blocked", 3),
        cause("wasteWater.frozen", spec.heated ? 0.5 : 2),
        cause("wasteWater.handleOff", 2),
      ],
      checks: [
        tryThis("wasteWater.turnHandle", ["wasteWater.handleOff"], 2, 0),
        tryThis("wasteWater.warmWater", ["wasteWater.frozen", "wasteWater.blocked"], 20, 0),
        tryThis("wasteWater.rodIt", ["wasteWater.blocked"], 20, 2),
      ],
    },
    {
      id: "wasteWater.smellsOrBacksUp",
      dangerous: false,
      causes: [
        cause("wasteWater.full", 4, { store: "wasteWater", times: 5 }),
        cause("wasteWater.trapDry", 3),
        cause("wasteWater.notLevel", 2),
      ],
      checks: [
        tryThis("wasteWater.readGauge", ["wasteWater.full"], 1, 0),
        tryThis("wasteWater.fillTraps", ["wasteWater.trapDry"], 2, 0),
        tryThis("wasteWater.parkLevel", ["wasteWater.notLevel"], 10, 0),
      ],
    },
  ],
};
