import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, tryThis } from "../fault-finding.ts";
import type { ChargingSpec } from "./spec.ts";

export const faults: SystemFaults<ChargingSpec> = {
  symptoms: (spec) => {
    const onMains = spec.mainsChargerA > 0;
    const onRoad = spec.drivingCharge !== "none";
    const ways = [...(onMains ? [notOnMains] : []), ...(onRoad ? [notOnTheRoad] : [])];
    return ways.length === 0 ? [noWayToCharge] : ways;
  },
};

const notOnMains: Symptom = {
  id: "charging.notOnMains",
  dangerous: false,
  causes: [
    cause("charging.chargerOff", 3),
    causeIn("hookUp", "charging.noMains", 3, { leadsTo: "hookUp.noMains" }),
    callFor("charging.chargerBroken", 1),
  ],
  checks: [
    tryThis("charging.mainsThere", ["charging.noMains"], 2, 0, { mentions: ["hookUp"] }),
    tryThis("charging.chargerOn", ["charging.chargerOff"], 2, 0, { after: ["charging.mainsThere"] }),
    tryThis("charging.measure", ["charging.chargerBroken"], 20, 2),
  ],
};

const notOnTheRoad: Symptom = {
  id: "charging.notOnTheRoad",
  dangerous: false,
  causes: [cause("charging.shortDrive", 3), callFor("charging.drivingFuse", 2)],
  checks: [
    tryThis("charging.howLongDriven", ["charging.shortDrive"], 1, 0),
    tryThis("charging.testFuses", ["charging.drivingFuse"], 20, 2),
  ],
};

const noWayToCharge: Symptom = {
  id: "charging.doesNotCharge",
  dangerous: false,
  causes: [cause("charging.noneFitted", 1)],
  checks: [tryThis("charging.askForMains", ["charging.noneFitted"], 1, 0)],
};
