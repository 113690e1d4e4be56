import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, stopAndCall, tryThis } from "../fault-finding.ts";
import type { HookUpSpec } from "./spec.ts";

export const faults: SystemFaults<HookUpSpec> = {
  symptoms: (spec) => [
    noMains,
    tripsAgain,
    ...(spec.adaptors > 0 ? [crossedWires] : []),
    stopAndCall("hookUp.tingles", "hookUp.faultToBody"),
    stopAndCall("hookUp.plugHot", "hookUp.burntContact"),
  ],
};

const noMains: Symptom = {
  id: "hookUp.noMains",
  dangerous: false,
  causes: [
    cause("hookUp.postTripped", 4),
    cause("hookUp.postNotOn", 2),
    cause("hookUp.plugNotHome", 3),
    cause("hookUp.rcdTripped", 3),
    cause("hookUp.breakerTripped", 2),
    cause("hookUp.faultyAppliance", 2),
    cause("hookUp.leadBroken", 1),
  ],
  checks: [
    tryThis("hookUp.plugsHome", ["hookUp.plugNotHome"], 2, 0),
    tryThis("hookUp.resetPost", ["hookUp.postTripped", "hookUp.postNotOn"], 5, 0, {
      after: ["hookUp.plugsHome"],
    }),
    tryThis("hookUp.switchRcd", ["hookUp.rcdTripped"], 2, 1, { after: ["hookUp.plugsHome"] }),
    tryThis("hookUp.switchBreakers", ["hookUp.breakerTripped"], 3, 1, { after: ["hookUp.switchRcd"] }),
    tryThis("hookUp.oneAtATime", ["hookUp.faultyAppliance"], 15, 1, { after: ["hookUp.switchRcd"] }),
    tryThis("hookUp.tryAnotherPost", ["hookUp.postTripped", "hookUp.postNotOn", "hookUp.leadBroken"], 10, 0, {
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
    tryThis("hookUp.readPost", ["hookUp.tooMuchOn"], 2, 0),
    tryThis("hookUp.lookForWater", ["hookUp.wetConnector"], 3, 1),
    tryThis("hookUp.oneAtATime", ["hookUp.tooMuchOn", "hookUp.faultyAppliance"], 15, 1, {
      after: ["hookUp.lookForWater"],
    }),
    tryThis("hookUp.insulationTest", ["hookUp.faultyAppliance"], 45, 2),
  ],
};

const crossedWires: Symptom = {
  id: "hookUp.crossedWires",
  dangerous: false,
  causes: [cause("hookUp.plugTurned", 5), cause("hookUp.postWired", 2), callFor("hookUp.vanWired", 0.5)],
  checks: [
    tryThis("hookUp.turnAdaptor", ["hookUp.plugTurned"], 3, 1),
    tryThis("hookUp.askOtherPost", ["hookUp.postWired"], 10, 0, { after: ["hookUp.turnAdaptor"] }),
    tryThis("hookUp.electrician", ["hookUp.vanWired"], 45, 2),
  ],
};
