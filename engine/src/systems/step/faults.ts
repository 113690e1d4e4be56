import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, tryThis } from "../fault-finding.ts";
import type { StepSpec } from "./spec.ts";

export const faults: SystemFaults<StepSpec> = {
  symptoms: (spec) => [spec.electric ? stuckElectric : stuckByHand],
};

const stuckElectric: Symptom = {
  id: "step.stuckOut",
  dangerous: false,
  causes: [
    cause("step.grit", 4),
    causeIn("leisureBattery", "step.noPower", 2, {
      worseWhen: { store: "battery12", times: 3 },
      leadsTo: "leisureBattery.flatMornings",
    }),
    cause("step.fuse", 1),
    cause("step.doorSwitch", 2),
    callFor("step.bent", 1),
  ],
  checks: [
    tryThis("step.engineOn", ["step.doorSwitch"], 2, 0),
    tryThis("step.readBattery", ["step.noPower"], 1, 0, { mentions: ["leisureBattery"] }),
    tryThis("step.brushOff", ["step.grit"], 5, 1),
    tryThis("step.changeFuse", ["step.fuse"], 5, 1),
    tryThis("step.pushHome", ["step.doorSwitch", "step.grit"], 5, 1, {
      after: ["step.engineOn", "step.brushOff"],
    }),
    tryThis("step.workshop", ["step.bent"], 45, 2),
  ],
};

const stuckByHand: Symptom = {
  id: "step.stuckByHand",
  dangerous: false,
  causes: [cause("step.grit", 4), cause("step.catchNotFree", 3), callFor("step.bent", 1)],
  checks: [
    tryThis("step.liftCatch", ["step.catchNotFree"], 2, 1),
    tryThis("step.brushOff", ["step.grit"], 5, 1),
    tryThis("step.workshop", ["step.bent"], 45, 2),
  ],
};
