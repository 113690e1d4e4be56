import type { Symptom, SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { HookUpSpec } from "./spec.ts";

export const faults: SystemFaults<HookUpSpec> = {
  symptoms: () => [noMains, tripsAgain, tingles],
};

const tingles: Symptom = {
  id: "hookUp.tingles",
  dangerous: true,
  causes: [cause("hookUp.faultToBody", 1)],
  checks: [],
};

const noMains: Symptom = {
  id: "hookUp.noMains",
  dangerous: false,
  causes: [
    cause("hookUp.postTripped", 4),
    cause("hookUp.plugNotHome", 3),
    cause("hookUp.rcdTripped", 3),
    cause("hookUp.breakerTripped", 2),
    cause("hookUp.leadBroken", 1),
  ],
  checks: [
    tryThis("hookUp.plugsHome", ["hookUp.plugNotHome"], 2, 0),
    tryThis("hookUp.resetPost", ["hookUp.postTripped"], 5, 0, { after: ["hookUp.plugsHome"] }),
    tryThis("hookUp.switchRcd", ["hookUp.rcdTripped"], 2, 1, { after: ["hookUp.plugsHome"] }),
    tryThis("hookUp.switchBreakers", ["hookUp.breakerTripped"], 3, 1, { after: ["hookUp.switchRcd"] }),
    tryThis("hookUp.tryAnotherPost", ["hookUp.postTripped", "hookUp.leadBroken"], 10, 0, {
      after: ["hookUp.resetPost"],
    }),
    tryThis("hookUp.testLead", ["hookUp.leadBroken"], 15, 2),
  ],
};

const tripsAgain: Symptom = {
  id: "hookUp.tripsAgain",
  dangerous: false,
  causes: [cause("hookUp.tooMuchOn", 4), cause("hookUp.wetConnector", 2), cause("hookUp.faultyAppliance", 3)],
  checks: [
    tryThis("hookUp.oneAtATime", ["hookUp.tooMuchOn", "hookUp.faultyAppliance"], 15, 1),
    tryThis("hookUp.lookForWater", ["hookUp.wetConnector"], 3, 0),
    tryThis("hookUp.insulationTest", ["hookUp.faultyAppliance"], 45, 2),
  ],
};
