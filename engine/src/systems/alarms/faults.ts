import type { Symptom, SystemFaults } from "../contract.ts";
import { cause, stopAndCall, tryThis } from "../fault-finding.ts";
import type { AlarmsSpec } from "./spec.ts";

export const faults: SystemFaults<AlarmsSpec> = {
  symptoms: (spec) => [
    ...(spec.carbonMonoxide > 0 ? [stopAndCall("alarms.carbonMonoxideSounds", "alarms.fumes")] : []),
    ...(spec.gas > 0 ? [stopAndCall("alarms.gasSounds", "alarms.gasInside")] : []),
    ...(spec.smoke > 0 ? [stopAndCall("alarms.smokeSounds", "alarms.fire")] : []),
    ...(spec.carbonMonoxide + spec.gas + spec.smoke > 0 ? [chirps] : []),
  ],
};

const chirps: Symptom = {
  id: "alarms.chirps",
  dangerous: false,
  causes: [cause("alarms.cellLow", 5), cause("alarms.tooOld", 1)],
  checks: [
    tryThis("alarms.changeCell", ["alarms.cellLow"], 5, 0),
    tryThis("alarms.readDate", ["alarms.tooOld"], 1, 0),
  ],
};
