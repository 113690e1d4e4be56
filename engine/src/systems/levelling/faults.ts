import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, tryThis } from "../fault-finding.ts";
import type { LevellingSpec } from "./spec.ts";

export const faults: SystemFaults<LevellingSpec> = {
  symptoms: (spec) => [...(spec.jacks === "hydraulic" ? [jackAlarm] : []), doorSticks],
};

const jackAlarm: Symptom = {
  id: "levelling.jackAlarm",
  dangerous: false,
  causes: [
    cause("levelling.notFullyUp", 5),
    cause("levelling.batteryLow", 3, { store: "battery12", times: 4 }),
    callFor("levelling.sensor", 1),
  ],
  checks: [
    tryThis("levelling.liftAgain", ["levelling.notFullyUp"], 3, 1),
    tryThis("levelling.engineOn", ["levelling.batteryLow"], 3, 0),
    tryThis("levelling.pumpByHand", ["levelling.sensor"], 30, 2, { after: ["levelling.liftAgain"] }),
  ],
};

const doorSticks: Symptom = {
  id: "levelling.doorSticks",
  dangerous: false,
  causes: [cause("levelling.bodyTwisted", 5), cause("levelling.lockerLoaded", 1)],
  checks: [
    tryThis("levelling.parkAgain", ["levelling.bodyTwisted"], 10, 0),
    tryThis("levelling.clearLocker", ["levelling.lockerLoaded"], 5, 0),
  ],
};
