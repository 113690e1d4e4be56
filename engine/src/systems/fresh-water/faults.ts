import type { Symptom, SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { FreshWaterSpec } from "./spec.ts";

const nothingComes: Symptom = {
  id: "freshWater.nothingComes",
  dangerous: false,
  causes: [
    cause("freshWater.empty", 4, { store: "freshWater", times: 5 }),
    cause("freshWater.drainOpen", 3),
    cause("freshWater.airInPipes", 2),
    cause("freshWater.filterBlocked", 1),
    cause("freshWater.frozen", 1),
  ],
  checks: [
    tryThis("freshWater.lookAtLevel", ["freshWater.empty"], 1, 0),
    tryThis("freshWater.shutDrains", ["freshWater.drainOpen"], 3, 0),
    tryThis("freshWater.openAllTaps", ["freshWater.airInPipes"], 3, 0, {
      after: ["freshWater.lookAtLevel"],
    }),
    tryThis("freshWater.warmUp", ["freshWater.frozen"], 60, 0),
    tryThis("freshWater.cleanFilter", ["freshWater.filterBlocked"], 15, 1, {
      after: ["freshWater.openAllTaps"],
    }),
  ],
};

const pumpSilent: Symptom = {
  id: "freshWater.pumpSilent",
  dangerous: false,
  causes: [
    cause("freshWater.switchOff", 4),
    cause("freshWater.noPower", 3, { store: "battery12", times: 4 }),
    cause("freshWater.fuse", 2),
    cause("freshWater.pumpBroken", 1),
  ],
  checks: [
    tryThis("freshWater.pressSwitch", ["freshWater.switchOff"], 1, 0),
    tryThis("freshWater.lightsOn", ["freshWater.noPower"], 1, 0, { mentions: ["lights"] }),
    tryThis("freshWater.changeFuse", ["freshWater.fuse", "freshWater.pumpBroken"], 15, 2),
  ],
};

const fuelInside: Symptom = {
  id: "freshWater.fuelInside",
  dangerous: true,
  causes: [cause("freshWater.wrongFiller", 1)],
  checks: [],
};

export const faults: SystemFaults<FreshWaterSpec> = {
  symptoms: () => [nothingComes, pumpSilent, fuelInside],
};
