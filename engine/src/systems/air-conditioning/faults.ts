import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, tryThis } from "../fault-finding.ts";
import type { AirConditioningSpec } from "./spec.ts";

export const faults: SystemFaults<AirConditioningSpec> = {
  symptoms: (spec) => [willNotStart(spec), coolsBadly, dripsInside],
};

const willNotStart = (spec: AirConditioningSpec): Symptom => ({
  id: "airConditioning.willNotStart",
  dangerous: false,
  causes: [
    causeIn("hookUp", "airConditioning.noMains", 4, { leadsTo: "hookUp.noMains" }),
    causeIn("hookUp", "airConditioning.postTooSmall", 3, { leadsTo: "hookUp.tripsAgain" }),
    cause("airConditioning.waitsItself", 3),
    ...(spec.remote ? [cause("airConditioning.remoteFlat", 3)] : []),
    callFor("airConditioning.broken", 1),
  ],
  checks: [
    tryThis("airConditioning.mainsThere", ["airConditioning.noMains"], 2, 0, { mentions: ["hookUp"] }),
    ...(spec.remote ? [tryThis("airConditioning.pressOnUnit", ["airConditioning.remoteFlat"], 1, 0)] : []),
    tryThis("airConditioning.waitFive", ["airConditioning.waitsItself"], 5, 0),
    tryThis("airConditioning.othersOff", ["airConditioning.postTooSmall"], 5, 0, {
      mentions: ["hookUp"],
      after: ["airConditioning.mainsThere"],
    }),
    tryThis("airConditioning.engineerLooks", ["airConditioning.broken"], 60, 2),
  ],
});

const coolsBadly: Symptom = {
  id: "airConditioning.coolsBadly",
  dangerous: false,
  causes: [
    cause("airConditioning.letsHeatIn", 4),
    cause("airConditioning.filterFull", 3),
    cause("airConditioning.setWrong", 2),
    callFor("airConditioning.broken", 1),
  ],
  checks: [
    tryThis("airConditioning.readSetting", ["airConditioning.setWrong"], 1, 0),
    tryThis("airConditioning.shutAndShade", ["airConditioning.letsHeatIn"], 30, 0),
    tryThis("airConditioning.rinseFilter", ["airConditioning.filterFull"], 10, 1),
    tryThis("airConditioning.engineerLooks", ["airConditioning.broken"], 60, 2),
  ],
};

const dripsInside: Symptom = {
  id: "airConditioning.dripsInside",
  dangerous: false,
  causes: [
    cause("airConditioning.notLevel", 4),
    cause("airConditioning.muggy", 3),
    callFor("airConditioning.drainBlocked", 2),
  ],
  checks: [
    tryThis("airConditioning.setWarmer", ["airConditioning.muggy"], 30, 0),
    tryThis("airConditioning.parkLevel", ["airConditioning.notLevel"], 10, 0),
    tryThis("airConditioning.clearDrain", ["airConditioning.drainBlocked"], 30, 2),
  ],
};
