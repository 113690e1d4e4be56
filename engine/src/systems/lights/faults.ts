import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, tryThis } from "../fault-finding.ts";
import type { LightsSpec } from "./spec.ts";

export const faults: SystemFaults<LightsSpec> = {
  symptoms: () => [dimOrOut, oneOut],
};

const dimOrOut: Symptom = {
  id: "lights.dimOrOut",
  dangerous: false,
  causes: [
    cause("lights.masterOff", 4),
    causeIn("leisureBattery", "lights.batteryLow", 4, {
      worseWhen: { store: "battery12", times: 5 },
      leadsTo: "leisureBattery.flatMornings",
    }),
    cause("lights.fuse", 1),
  ],
  checks: [
    tryThis("lights.pressMain", ["lights.masterOff"], 1, 0),
    tryThis("lights.readBattery", ["lights.batteryLow"], 1, 0, { mentions: ["leisureBattery"] }),
    tryThis("lights.changeFuse", ["lights.fuse"], 10, 1, { after: ["lights.pressMain"] }),
  ],
};

const oneOut: Symptom = {
  id: "lights.oneOut",
  dangerous: false,
  causes: [cause("lights.ownSwitch", 4), cause("lights.fuse", 2), callFor("lights.lampGone", 2)],
  checks: [
    tryThis("lights.pressOwnSwitch", ["lights.ownSwitch"], 1, 0),
    tryThis("lights.changeFuse", ["lights.fuse"], 10, 1, { after: ["lights.pressOwnSwitch"] }),
    tryThis("lights.changeLamp", ["lights.lampGone"], 15, 2),
  ],
};
