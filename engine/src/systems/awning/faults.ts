import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, stopAndCall, tryThis } from "../fault-finding.ts";
import type { AwningSpec } from "./spec.ts";

export const faults: SystemFaults<AwningSpec> = {
  symptoms: () => [
    willNotClose,
    willNotOpen,
    legStuck,
    stopAndCall("awning.takenByWind", "awning.tornOrBent"),
  ],
};

const willNotClose: Symptom = {
  id: "awning.willNotClose",
  dangerous: false,
  causes: [
    cause("awning.sags", 3),
    cause("awning.debris", 2),
    cause("awning.legNotHome", 2),
    callFor("awning.armBent", 1),
  ],
  checks: [
    tryThis("awning.compareArms", ["awning.armBent"], 2, 0),
    tryThis("awning.legsHome", ["awning.legNotHome"], 3, 1, { after: ["awning.compareArms"] }),
    tryThis("awning.brushOff", ["awning.debris"], 5, 0, { after: ["awning.compareArms"] }),
    tryThis("awning.liftMiddle", ["awning.sags"], 3, 1, { after: ["awning.compareArms"] }),
    tryThis("awning.handBack", ["awning.armBent"], 20, 2, { after: ["awning.compareArms"] }),
  ],
};

const willNotOpen: Symptom = {
  id: "awning.willNotOpen",
  dangerous: false,
  causes: [cause("awning.wrongWay", 4), cause("awning.crankNotHome", 3), callFor("awning.gear", 1)],
  checks: [
    tryThis("awning.hookCrank", ["awning.crankNotHome"], 1, 0),
    tryThis("awning.turnOtherWay", ["awning.wrongWay"], 1, 0, { after: ["awning.hookCrank"] }),
    tryThis("awning.openGear", ["awning.gear"], 45, 2),
  ],
};

const legStuck: Symptom = {
  id: "awning.legStuck",
  dangerous: false,
  causes: [cause("awning.legCatch", 4), cause("awning.legGrit", 2), callFor("awning.legBent", 1)],
  checks: [
    tryThis("awning.freeLegCatch", ["awning.legCatch"], 2, 0),
    tryThis("awning.cleanLeg", ["awning.legGrit"], 5, 0),
    tryThis("awning.changeLeg", ["awning.legBent"], 30, 2),
  ],
};
