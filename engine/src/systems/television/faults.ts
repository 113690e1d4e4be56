import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, tryThis } from "../fault-finding.ts";
import type { TelevisionSpec } from "./spec.ts";

export const faults: SystemFaults<TelevisionSpec> = {
  symptoms: (spec) => [noSignal(spec), willNotSwitchOn, ...(spec.aerial === "dish" ? [dishWillNotStow] : [])],
};

const noSignal = ({ aerial }: TelevisionSpec): Symptom => ({
  id: "television.noPicture",
  dangerous: false,
  causes: [
    cause("television.notTuned", 4),
    cause("television.boosterOff", 3),
    cause("television.inTheShade", 2),
    ...(aerial === "mast" ? [cause("television.notAimed", 3)] : []),
    ...(aerial === "dish" ? [cause("television.outOfReach", 2)] : []),
    callFor("television.cable", 1),
  ],
  checks: [
    tryThis("television.pressBooster", ["television.boosterOff"], 1, 0),
    ...(aerial === "mast"
      ? [
          tryThis("television.turnMast", ["television.notAimed"], 3, 1, {
            after: ["television.pressBooster"],
          }),
        ]
      : []),
    tryThis("television.tuneAgain", ["television.notTuned"], 5, 0, {
      after: ["television.pressBooster"],
    }),
    ...(aerial === "dish" ? [tryThis("television.askReach", ["television.outOfReach"], 2, 0)] : []),
    tryThis("television.moveVan", ["television.inTheShade"], 10, 0),
    tryThis("television.testCable", ["television.cable"], 30, 2),
  ],
});

const willNotSwitchOn: Symptom = {
  id: "television.willNotSwitchOn",
  dangerous: false,
  causes: [
    cause("television.remoteCells", 4),
    cause("television.socketOff", 3),
    causeIn("leisureBattery", "television.noPower", 2, {
      worseWhen: { store: "battery12", times: 4 },
      leadsTo: "leisureBattery.flatMornings",
    }),
    callFor("television.broken", 1),
  ],
  checks: [
    tryThis("television.pressOnSet", ["television.remoteCells"], 1, 0),
    tryThis("television.plugIn", ["television.socketOff"], 1, 0),
    tryThis("television.readBattery", ["television.noPower"], 1, 0, { mentions: ["leisureBattery"] }),
    tryThis("television.swap", ["television.broken"], 45, 2),
  ],
};

const dishWillNotStow: Symptom = {
  id: "television.dishWillNotStow",
  dangerous: false,
  causes: [
    causeIn("leisureBattery", "television.batteryLow", 4, {
      worseWhen: { store: "battery12", times: 5 },
      leadsTo: "leisureBattery.flatMornings",
    }),
    cause("television.notAsked", 2),
    callFor("television.dishMotor", 1),
  ],
  checks: [
    tryThis("television.pressStow", ["television.notAsked"], 2, 0),
    tryThis("television.engineOn", ["television.batteryLow"], 10, 0, { mentions: ["leisureBattery"] }),
    tryThis("television.stowByHand", ["television.dishMotor"], 30, 2),
  ],
};
