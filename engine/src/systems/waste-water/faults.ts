import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, tryThis } from "../fault-finding.ts";
import type { WasteWaterSpec } from "./spec.ts";

export const faults: SystemFaults<WasteWaterSpec> = {
  symptoms: (spec) => [willNotEmpty(spec), smellsOrBacksUp],
};

const willNotEmpty = (spec: WasteWaterSpec): Symptom => ({
  id: "wasteWater.willNotEmpty",
  dangerous: false,
  causes: [
    cause("wasteWater.blocked", 3),
    cause("wasteWater.frozen", spec.heated ? 0.5 : 2),
    cause("wasteWater.handleOff", 2),
    callFor("wasteWater.valveStuck", 1),
  ],
  checks: [
    tryThis("wasteWater.turnHandle", ["wasteWater.handleOff"], 2, 0),
    tryThis("wasteWater.warmWater", ["wasteWater.frozen", "wasteWater.blocked"], 20, 0, {
      after: ["wasteWater.turnHandle"],
    }),
    tryThis("wasteWater.rodIt", ["wasteWater.blocked"], 20, 2),
    tryThis("wasteWater.freeValve", ["wasteWater.valveStuck"], 30, 2),
  ],
});

const smellsOrBacksUp: Symptom = {
  id: "wasteWater.smellsOrBacksUp",
  dangerous: false,
  causes: [
    cause("wasteWater.full", 4, { store: "wasteWater", times: 5 }),
    cause("wasteWater.trapDry", 3),
    cause("wasteWater.notLevel", 2),
    cause("wasteWater.drainBlocked", 1),
  ],
  checks: [
    tryThis("wasteWater.readGauge", ["wasteWater.full"], 1, 0),
    tryThis("wasteWater.fillTraps", ["wasteWater.trapDry"], 2, 0),
    tryThis("wasteWater.parkLevel", ["wasteWater.notLevel"], 10, 0),
    tryThis("wasteWater.clearPlughole", ["wasteWater.drainBlocked"], 5, 0, {
      after: ["wasteWater.readGauge"],
    }),
  ],
};
