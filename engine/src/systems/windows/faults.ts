import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, tryThis } from "../fault-finding.ts";
import type { WindowsSpec } from "./spec.ts";

export const faults: SystemFaults<WindowsSpec> = {
  symptoms: (spec) => [
    ...(spec.blinds > 0 ? [blindStuck] : []),
    ...(spec.hinged + spec.rooflights > 0 ? [willNotLatch] : []),
    drips,
  ],
};

const blindStuck: Symptom = {
  id: "windows.blindStuck",
  dangerous: false,
  causes: [
    cause("windows.railCrooked", 4),
    cause("windows.railOffHook", 2),
    callFor("windows.cordBroken", 1),
  ],
  checks: [
    tryThis("windows.evenRail", ["windows.railCrooked"], 2, 0),
    tryThis("windows.unhookRail", ["windows.railOffHook"], 2, 0, { after: ["windows.evenRail"] }),
    tryThis("windows.changeBlind", ["windows.cordBroken"], 45, 2),
  ],
};

const willNotLatch: Symptom = {
  id: "windows.willNotLatch",
  dangerous: false,
  causes: [
    cause("windows.sealFolded", 3),
    cause("windows.stayNotFree", 3),
    callFor("windows.catchBroken", 1),
  ],
  checks: [
    tryThis("windows.freeStay", ["windows.stayNotFree"], 2, 0),
    tryThis("windows.smoothSeal", ["windows.sealFolded"], 2, 0),
    tryThis("windows.changeCatch", ["windows.catchBroken"], 30, 2),
  ],
};

const drips: Symptom = {
  id: "windows.drips",
  dangerous: false,
  causes: [cause("windows.condensation", 5), cause("windows.notLatched", 3), callFor("windows.seal", 1)],
  checks: [
    tryThis("windows.latchAll", ["windows.notLatched"], 2, 0),
    tryThis("windows.airOut", ["windows.condensation"], 20, 0),
    tryThis("windows.reseal", ["windows.seal"], 60, 2),
  ],
};
