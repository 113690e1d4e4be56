import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, stopAndCall, tryThis } from "../fault-finding.ts";
import type { FreshWaterSpec } from "./spec.ts";

export const faults: SystemFaults<FreshWaterSpec> = {
  symptoms: () => [
    nothingComes,
    pumpSilent,
    pumpRunsOn,
    runsOutUnder,
    tastes,
    stopAndCall("freshWater.fuelInside", "freshWater.wrongFiller"),
  ],
};

const nothingComes: Symptom = {
  id: "freshWater.nothingComes",
  dangerous: false,
  causes: [
    cause("freshWater.empty", 4, { store: "freshWater", times: 5 }),
    cause("freshWater.drainOpen", 3),
    cause("freshWater.airInPipes", 2),
    cause("freshWater.filterBlocked", 1),
    cause("freshWater.frozen", 1),
    callFor("freshWater.hoseOff", 1),
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
    tryThis("freshWater.fixHose", ["freshWater.hoseOff"], 30, 2),
  ],
};

const pumpSilent: Symptom = {
  id: "freshWater.pumpSilent",
  dangerous: false,
  causes: [
    cause("freshWater.switchOff", 4),
    causeIn("leisureBattery", "freshWater.noPower", 3, {
      worseWhen: { store: "battery12", times: 4 },
      leadsTo: "leisureBattery.allDead",
    }),
    cause("freshWater.fuse", 2),
    callFor("freshWater.pumpBroken", 1),
  ],
  checks: [
    tryThis("freshWater.pressSwitch", ["freshWater.switchOff"], 1, 0),
    tryThis("freshWater.lightsOn", ["freshWater.noPower"], 1, 0, { mentions: ["lights"] }),
    tryThis("freshWater.readBattery", ["freshWater.noPower"], 1, 0, { mentions: ["leisureBattery"] }),
    tryThis("freshWater.changeFuse", ["freshWater.fuse"], 5, 1, { after: ["freshWater.pressSwitch"] }),
    tryThis("freshWater.changePump", ["freshWater.pumpBroken"], 45, 2),
  ],
};

const pumpRunsOn: Symptom = {
  id: "freshWater.pumpRunsOn",
  dangerous: false,
  causes: [
    cause("freshWater.tapOpen", 4),
    cause("freshWater.empty", 3, { store: "freshWater", times: 5 }),
    cause("freshWater.airInPipes", 2),
    cause("freshWater.leakInside", 2),
    callFor("freshWater.pressureSwitch", 1),
  ],
  checks: [
    tryThis("freshWater.shutAllTaps", ["freshWater.tapOpen"], 1, 0),
    tryThis("freshWater.lookForDamp", ["freshWater.leakInside"], 3, 0),
    tryThis("freshWater.lookAtLevel", ["freshWater.empty"], 1, 0),
    tryThis("freshWater.openAllTaps", ["freshWater.airInPipes"], 3, 0, {
      after: ["freshWater.lookAtLevel"],
    }),
    tryThis("freshWater.changePump", ["freshWater.pressureSwitch"], 45, 2),
  ],
};

const runsOutUnder: Symptom = {
  id: "freshWater.runsOutUnder",
  dangerous: false,
  causes: [
    cause("freshWater.drainOpen", 4),
    causeIn("hotWater", "freshWater.frostValveOpen", 4, { leadsTo: "hotWater.lostOvernight" }),
    cause("freshWater.overflow", 3),
    callFor("freshWater.hoseOff", 1),
  ],
  checks: [
    tryThis("freshWater.wasItJustFilled", ["freshWater.overflow"], 5, 0),
    tryThis("freshWater.shutDrains", ["freshWater.drainOpen"], 3, 0),
    tryThis("freshWater.lookAtFrostValve", ["freshWater.frostValveOpen"], 3, 0, {
      mentions: ["hotWater"],
    }),
    tryThis("freshWater.fixHose", ["freshWater.hoseOff"], 30, 2),
  ],
};

const tastes: Symptom = {
  id: "freshWater.tastes",
  dangerous: false,
  causes: [cause("freshWater.stale", 4), callFor("freshWater.tankDirty", 1)],
  checks: [
    tryThis("freshWater.drainAndRefill", ["freshWater.stale"], 40, 0),
    tryThis("freshWater.sanitise", ["freshWater.tankDirty"], 90, 2),
  ],
};
