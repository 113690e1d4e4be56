import type { Symptom, SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { LpgSpec } from "./spec.ts";

export const faults: SystemFaults<LpgSpec> = {
  symptoms: (spec) => [nothingLights(spec), weakFlame(spec), smell],
};

const smell: Symptom = { id: "lpg.smell", dangerous: true, causes: [cause("lpg.leak", 1)], checks: [] };

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
      cause("lpg.regulator", 1),
    ],
    checks: [
      tryThis("lpg.openValve", ["lpg.valveShut"], 1, 0),
      ...(spec.cylinders > 1 && spec.arrangement === "exchange"
        ? [tryThis("lpg.otherBottle", ["lpg.empty"], 5, 1, { after: ["lpg.openValve"] })]
        : [tryThis("lpg.readContent", ["lpg.empty"], 1, 0)]),
      tryThis("lpg.openSlowly", ["lpg.ruptureValve"], 3, 1, { after: ["lpg.openValve"] }),
      tryThis("lpg.lightThreeTimes", ["lpg.airInLine"], 3, 1, {
        after: ["lpg.openSlowly"],
        mentions: ["cooking"],
      }),
      ...(spec.impactShutoff ? [tryThis("lpg.resetImpact", ["lpg.impactTripped"], 2, 1)] : []),
      tryThis("lpg.lookAtRegulator", ["lpg.regulator"], 15, 2),
    ],
  };
}

function weakFlame(spec: LpgSpec): Symptom {
  return {
    id: "lpg.weakInCold",
    dangerous: false,
    causes: [
      cause("lpg.nearlyEmpty", 3, { store: "lpg", times: 4 }),
      cause("lpg.tooCold", spec.fuel === "butane" ? 5 : 0.5),
      cause("lpg.regulator", 1),
    ],
    checks: [
      tryThis("lpg.weighOrShake", ["lpg.nearlyEmpty"], 2, 0),
      tryThis("lpg.readGasName", ["lpg.tooCold"], 1, 0),
      tryThis("lpg.lookAtRegulator", ["lpg.regulator"], 15, 2),
    ],
  };
}
