import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, stopAndCall, tryThis } from "../fault-finding.ts";
import type { DefSpec } from "./spec.ts";

export const faults: SystemFaults<DefSpec> = {
  symptoms: () => [lightOn, stopAndCall("def.wrongTank", "def.mixedUp")],
};

const lightOn: Symptom = {
  id: "def.lightOn",
  dangerous: false,
  causes: [
    cause("def.low", 5, { store: "def", times: 5 }),
    cause("def.notYetSeen", 2),
    callFor("def.sensor", 1),
  ],
  checks: [
    tryThis("def.readRange", ["def.low"], 1, 0),
    tryThis("def.topUp", ["def.low"], 15, 1, { after: ["def.readRange"] }),
    tryThis("def.driveTwenty", ["def.notYetSeen"], 20, 0, { after: ["def.topUp"] }),
    tryThis("def.readCodes", ["def.sensor"], 30, 2),
  ],
};
