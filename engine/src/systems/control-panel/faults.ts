import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, tryThis } from "../fault-finding.ts";
import type { ControlPanelSpec } from "./spec.ts";

/** The panel shows what others do: a dead living part is the battery's symptom, a pump that does not stop the water's. */
export const faults: SystemFaults<ControlPanelSpec> = {
  symptoms: (spec) => (spec.gauges === "none" ? [] : [gaugeWrong]),
};

const gaugeWrong: Symptom = {
  id: "controlPanel.gaugeWrong",
  dangerous: false,
  causes: [
    causeIn("wasteWater", "controlPanel.dirtyWasteProbes", 4),
    cause("controlPanel.notLevel", 3),
    callFor("controlPanel.dirtyProbes", 1),
    callFor("controlPanel.wire", 1),
  ],
  checks: [
    tryThis("controlPanel.parkLevel", ["controlPanel.notLevel"], 10, 0),
    tryThis("controlPanel.rinseWasteTank", ["controlPanel.dirtyWasteProbes"], 20, 0, {
      after: ["controlPanel.parkLevel"],
      mentions: ["wasteWater"],
    }),
    tryThis("controlPanel.cleanProbes", ["controlPanel.dirtyProbes", "controlPanel.dirtyWasteProbes"], 20, 2),
    tryThis("controlPanel.testWire", ["controlPanel.wire"], 20, 2),
  ],
};
