import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, stopAndCall, tryThis } from "../fault-finding.ts";
import type { CabSpec } from "./spec.ts";

export const faults: SystemFaults<CabSpec> = {
  symptoms: (spec) => [
    stopAndCall("cab.redLight", "cab.oilOrBrakesOrHeat"),
    amberLight,
    handbrakeAlarm,
    ...(spec.reversingCamera ? [cameraDead] : []),
  ],
};

const amberLight: Symptom = {
  id: "cab.amberLight",
  dangerous: false,
  causes: [cause("cab.serviceDue", 3), cause("cab.exhaustSystem", 3), cause("cab.tyrePressure", 2)],
  checks: [
    tryThis("cab.readMessage", ["cab.serviceDue", "cab.exhaustSystem", "cab.tyrePressure"], 1, 0),
    tryThis("cab.lookAtTyres", ["cab.tyrePressure"], 3, 0, { after: ["cab.readMessage"] }),
    tryThis("cab.workshopReads", ["cab.exhaustSystem", "cab.serviceDue"], 30, 2, {
      after: ["cab.readMessage"],
    }),
  ],
};

const handbrakeAlarm: Symptom = {
  id: "cab.handbrakeAlarm",
  dangerous: false,
  causes: [cause("cab.brakeNotOff", 5), callFor("cab.brakeSwitch", 1)],
  checks: [
    tryThis("cab.leverRightDown", ["cab.brakeNotOff"], 1, 0),
    tryThis("cab.mendSwitch", ["cab.brakeSwitch"], 30, 2),
  ],
};

const cameraDead: Symptom = {
  id: "cab.cameraDead",
  dangerous: false,
  causes: [cause("cab.notInReverse", 2), cause("cab.lensDirty", 3), callFor("cab.cameraFuse", 1)],
  checks: [
    tryThis("cab.putInReverse", ["cab.notInReverse"], 1, 0),
    tryThis("cab.wipeLens", ["cab.lensDirty"], 1, 0),
    tryThis("cab.changeFuse", ["cab.cameraFuse"], 15, 2),
  ],
};
