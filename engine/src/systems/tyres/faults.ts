import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, stopAndCall, tryThis } from "../fault-finding.ts";
import type { TyresSpec } from "./spec.ts";

export const faults: SystemFaults<TyresSpec> = {
  symptoms: () => [
    warning,
    stopAndCall("tyres.flat", "tyres.puncture"),
    {
      id: "tyres.shakes",
      dangerous: true,
      causes: [callFor("tyres.looseNuts", 1), callFor("tyres.lostWeight", 2)],
      checks: [],
    },
  ],
};

const warning: Symptom = {
  id: "tyres.warning",
  dangerous: false,
  causes: [
    cause("tyres.coldMorning", 4),
    cause("tyres.slowPuncture", 3),
    cause("tyres.valveLeaks", 1),
    callFor("tyres.sensor", 1),
  ],
  checks: [
    tryThis("tyres.lookRound", ["tyres.slowPuncture"], 2, 0),
    tryThis("tyres.measureCold", ["tyres.coldMorning"], 10, 1, { after: ["tyres.lookRound"] }),
    tryThis("tyres.measureAgain", ["tyres.slowPuncture", "tyres.valveLeaks"], 10, 0, {
      after: ["tyres.measureCold"],
    }),
    tryThis("tyres.tyreFitter", ["tyres.slowPuncture", "tyres.valveLeaks", "tyres.sensor"], 60, 2),
  ],
};
