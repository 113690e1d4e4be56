import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, tryThis } from "../fault-finding.ts";
import type { ControlPanelSpec } from "./spec.ts";

export const faults: SystemFaults<ControlPanelSpec> = {
  symptoms: (spec) => [
    everythingDead(spec),
    ...(spec.gauges === "none" ? [] : [gaugeWrong]),
    ...(spec.pumpSwitch ? [pumpRunsOn] : []),
  ],
};

const everythingDead = (spec: ControlPanelSpec): Symptom => ({
  id: "controlPanel.everythingDead",
  dangerous: false,
  causes: [
    ...(spec.masterSwitch ? [cause("controlPanel.masterOff", 5)] : []),
    causeIn("leisureBattery", "controlPanel.batteryFlat", 4, {
      worseWhen: { store: "battery12", times: 5 },
      leadsTo: "leisureBattery.flatMornings",
    }),
    cause("controlPanel.isolatorOff", 2),
    callFor("controlPanel.mainFuse", 2),
  ],
  checks: [
    ...(spec.masterSwitch ? [tryThis("controlPanel.masterOn", ["controlPanel.masterOff"], 1, 0)] : []),
    tryThis("controlPanel.engineOn", ["controlPanel.batteryFlat"], 3, 0, { mentions: ["leisureBattery"] }),
    tryThis("controlPanel.isolatorOn", ["controlPanel.isolatorOff"], 3, 0),
    tryThis("controlPanel.changeMainFuse", ["controlPanel.mainFuse"], 15, 2),
  ],
});

const gaugeWrong: Symptom = {
  id: "controlPanel.gaugeWrong",
  dangerous: false,
  causes: [
    callFor("controlPanel.dirtyProbes", 4),
    cause("controlPanel.notLevel", 3),
    callFor("controlPanel.wire", 1),
  ],
  checks: [
    tryThis("controlPanel.parkLevel", ["controlPanel.notLevel"], 10, 0),
    tryThis("controlPanel.cleanProbes", ["controlPanel.dirtyProbes"], 20, 2),
    tryThis("controlPanel.testWire", ["controlPanel.wire"], 20, 2),
  ],
};

const pumpRunsOn: Symptom = {
  id: "controlPanel.pumpRunsOn",
  dangerous: false,
  causes: [
    causeIn("freshWater", "controlPanel.tapOpen", 4),
    causeIn("freshWater", "controlPanel.tankEmpty", 4, { worseWhen: { store: "freshWater", times: 6 } }),
    cause("controlPanel.leak", 1),
  ],
  checks: [
    tryThis("controlPanel.pumpOffFirst", ["controlPanel.tapOpen", "controlPanel.tankEmpty"], 2, 0, {
      mentions: ["freshWater"],
    }),
    tryThis("controlPanel.lookForWet", ["controlPanel.leak"], 5, 0, { after: ["controlPanel.pumpOffFirst"] }),
  ],
};
