import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, stopAndCall, tryThis } from "../fault-finding.ts";
import type { TractionBatterySpec } from "./spec.ts";

export const faults: SystemFaults<TractionBatterySpec> = {
  symptoms: (spec) => [willNotCharge(spec), lowRange, smokes],
};

const willNotCharge = (spec: TractionBatterySpec): Symptom => ({
  id: "tractionBattery.willNotCharge",
  dangerous: false,
  causes: [
    cause("tractionBattery.plugNotHome", 4),
    cause("tractionBattery.pointDead", 4),
    cause("tractionBattery.timer", 2),
    ...(spec.postChargeA > 0
      ? [causeIn("hookUp", "tractionBattery.postTripped", 3, { leadsTo: "hookUp.tripsAgain" })]
      : []),
    callFor("tractionBattery.chargerBroken", 0.5),
  ],
  checks: [
    tryThis("tractionBattery.plugAgain", ["tractionBattery.plugNotHome"], 2, 0),
    tryThis("tractionBattery.timerOff", ["tractionBattery.timer"], 2, 0),
    ...(spec.postChargeA > 0
      ? [
          tryThis("tractionBattery.lowerCurrent", ["tractionBattery.postTripped"], 3, 0, {
            mentions: ["hookUp"],
          }),
        ]
      : []),
    tryThis("tractionBattery.anotherPoint", ["tractionBattery.pointDead"], 15, 0, {
      after: ["tractionBattery.plugAgain"],
    }),
    tryThis("tractionBattery.readCodes", ["tractionBattery.chargerBroken"], 30, 2),
  ],
});

const lowRange: Symptom = {
  id: "tractionBattery.lowRange",
  dangerous: false,
  causes: [
    cause("tractionBattery.empty", 5, { store: "tractionBattery", times: 5 }),
    cause("tractionBattery.coldOrFast", 4),
    cause("tractionBattery.livingDraws", 2),
  ],
  checks: [
    tryThis("tractionBattery.readCharge", ["tractionBattery.empty"], 1, 0),
    tryThis("tractionBattery.slowDown", ["tractionBattery.coldOrFast"], 2, 0),
    tryThis("tractionBattery.switchLivingOff", ["tractionBattery.livingDraws"], 3, 0),
  ],
};

const smokes = stopAndCall("tractionBattery.smokes", "tractionBattery.cellsHurt");
