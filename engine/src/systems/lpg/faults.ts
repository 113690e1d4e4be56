import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, stopAndCall, tryThis } from "../fault-finding.ts";
import type { LpgSpec } from "./spec.ts";

export const faults: SystemFaults<LpgSpec> = {
  symptoms: (spec) => [
    nothingLights(spec),
    oneThingOnly,
    weakFlame(spec),
    ...(spec.arrangement === "exchange"
      ? []
      : [willNotFill, stopAndCall("lpg.smellAfterFill", "lpg.fillerLeaks")]),
    stopAndCall("lpg.smell", "lpg.leak"),
  ],
};

function nothingLights(spec: LpgSpec): Symptom {
  return {
    id: "lpg.nothingLights",
    dangerous: false,
    causes: [
      cause("lpg.empty", 4, { store: "lpg", times: 5 }),
      cause("lpg.valveShut", 4),
      cause("lpg.ruptureValve", 3),
      cause("lpg.airInLine", 2),
      ...(spec.impactShutoff ? [cause("lpg.impactTripped", 1)] : []),
      ...(spec.fuel === "butane" ? [cause("lpg.tooCold", 3)] : []),
      callFor("lpg.regulator", 1),
    ],
    checks: [
      tryThis("lpg.openValve", ["lpg.valveShut"], 1, 0),
      ...(spec.fuel === "butane" ? [tryThis("lpg.isItFreezing", ["lpg.tooCold"], 1, 0)] : []),
      ...(spec.cylinders > 1 && spec.arrangement === "exchange"
        ? [tryThis("lpg.otherBottle", ["lpg.empty"], 5, 1, { after: ["lpg.openValve"] })]
        : [tryThis("lpg.readContent", ["lpg.empty"], 1, 0)]),
      tryThis("lpg.openSlowly", ["lpg.ruptureValve"], 3, 1, { after: ["lpg.openValve"] }),
      tryThis("lpg.lightThreeTimes", ["lpg.airInLine"], 3, 1, {
        after: ["lpg.openSlowly"],
        mentions: ["cooking"],
      }),
      tryThis("lpg.startThreeTimes", ["lpg.airInLine"], 10, 1, { after: ["lpg.openSlowly"] }),
      ...(spec.impactShutoff
        ? [tryThis("lpg.resetImpact", ["lpg.impactTripped"], 2, 1, { after: ["lpg.openValve"] })]
        : []),
      tryThis("lpg.lookAtRegulator", ["lpg.regulator"], 15, 2),
    ],
  };
}

const oneThingOnly: Symptom = {
  id: "lpg.oneThingOnly",
  dangerous: false,
  causes: [cause("lpg.tapShut", 4), callFor("lpg.thatAppliance", 3)],
  checks: [
    tryThis("lpg.openItsTap", ["lpg.tapShut"], 2, 0),
    tryThis("lpg.engineerLooks", ["lpg.thatAppliance"], 45, 2),
  ],
};

function weakFlame(spec: LpgSpec): Symptom {
  return {
    id: "lpg.weakInCold",
    dangerous: false,
    causes: [
      cause("lpg.nearlyEmpty", 3, { store: "lpg", times: 4 }),
      cause("lpg.tooCold", spec.fuel === "butane" ? 5 : 0.5),
      callFor("lpg.regulator", 1),
    ],
    checks: [
      tryThis("lpg.weighOrShake", ["lpg.nearlyEmpty"], 2, 0),
      tryThis("lpg.readGasName", ["lpg.tooCold"], 1, 0),
      tryThis("lpg.lookAtRegulator", ["lpg.regulator"], 15, 2),
    ],
  };
}

const willNotFill: Symptom = {
  id: "lpg.willNotFill",
  dangerous: false,
  causes: [
    cause("lpg.wrongAdaptor", 4),
    cause("lpg.alreadyFull", 3),
    cause("lpg.pumpWeak", 2),
    callFor("lpg.fillValveShut", 1),
  ],
  checks: [
    tryThis("lpg.readFull", ["lpg.alreadyFull"], 1, 0),
    tryThis("lpg.fitAdaptor", ["lpg.wrongAdaptor"], 3, 1, { after: ["lpg.readFull"] }),
    tryThis("lpg.otherPump", ["lpg.pumpWeak"], 20, 0, { after: ["lpg.fitAdaptor"] }),
    tryThis("lpg.engineerLooks", ["lpg.fillValveShut"], 45, 2),
  ],
};
