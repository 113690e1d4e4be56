import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, tryThis } from "../fault-finding.ts";
import type { KeysSpec } from "./spec.ts";

export const faults: SystemFaults<KeysSpec> = {
  symptoms: (spec) => [
    doorWillNotLock,
    engineWillNotStart(spec),
    lostOrLockedIn,
    ...(spec.alarm ? [alarmSounds] : []),
  ],
};

const doorWillNotLock: Symptom = {
  id: "keys.doorWillNotLock",
  dangerous: false,
  causes: [cause("keys.bodyTwisted", 3), cause("keys.latchNotHome", 3), callFor("keys.fuse", 1)],
  checks: [
    tryThis("keys.shutHard", ["keys.latchNotHome"], 1, 0),
    tryThis("keys.parkLevel", ["keys.bodyTwisted"], 10, 0, { after: ["keys.shutHard"] }),
    tryThis("keys.changeFuse", ["keys.fuse"], 15, 2),
  ],
};

const engineWillNotStart = (spec: KeysSpec): Symptom => ({
  id: "keys.engineWillNotStart",
  dangerous: false,
  causes: [
    cause("keys.cabBatteryFlat", 4, { store: "starterBattery", times: 4 }),
    cause("keys.keyNotRead", 3),
    cause("keys.notInNeutral", 2),
  ],
  checks: [
    tryThis("keys.clutchDown", ["keys.notInNeutral"], 1, 0),
    tryThis("keys.holdKeyClose", ["keys.keyNotRead"], 1, 0),
    ...(spec.sets > 1
      ? [tryThis("keys.secondKey", ["keys.keyNotRead"], 3, 0, { after: ["keys.holdKeyClose"] })]
      : []),
    tryThis("keys.lookAtCabLights", ["keys.cabBatteryFlat"], 1, 0),
    tryThis("keys.jumpStart", ["keys.cabBatteryFlat"], 30, 2, { after: ["keys.lookAtCabLights"] }),
  ],
});

const lostOrLockedIn: Symptom = {
  id: "keys.lostOrLockedIn",
  dangerous: false,
  causes: [cause("keys.lockedIn", 3), cause("keys.mislaid", 3), callFor("keys.gone", 2)],
  checks: [
    tryThis("keys.lookWhereLastUsed", ["keys.mislaid"], 10, 0),
    tryThis("keys.tryEveryDoor", ["keys.lockedIn"], 3, 0),
    tryThis("keys.openByTrade", ["keys.lockedIn", "keys.gone"], 120, 2),
  ],
};

const alarmSounds: Symptom = {
  id: "keys.alarmSounds",
  dangerous: false,
  causes: [cause("keys.movementInside", 5), cause("keys.somethingOpen", 3), callFor("keys.alarmFault", 1)],
  checks: [
    tryThis("keys.doorsOnly", ["keys.movementInside"], 1, 0),
    tryThis("keys.shutAll", ["keys.somethingOpen"], 3, 0),
    tryThis("keys.alarmReset", ["keys.alarmFault"], 30, 2),
  ],
};
