import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, stopAndCall, tryThis } from "../fault-finding.ts";
import type { FuelSpec } from "./spec.ts";

export const faults: SystemFaults<FuelSpec> = {
  symptoms: () => [stopAndCall("fuel.wrongFuel", "fuel.wrongNozzle"), losesPower],
};

const losesPower: Symptom = {
  id: "fuel.losesPower",
  dangerous: false,
  causes: [
    cause("fuel.nearlyEmpty", 3, { store: "fuel", times: 5 }),
    cause("fuel.filterFull", 3),
    callFor("fuel.coldFuel", 1),
  ],
  checks: [
    tryThis("fuel.readGauge", ["fuel.nearlyEmpty"], 1, 0),
    tryThis("fuel.readMessage", ["fuel.filterFull"], 1, 0),
    tryThis("fuel.driveFast", ["fuel.filterFull"], 20, 0, { after: ["fuel.readMessage"] }),
    tryThis("fuel.workshop", ["fuel.coldFuel", "fuel.filterFull"], 60, 2),
  ],
};
