import type { Symptom, SystemFaults } from "../contract.ts";
import { callFor, cause, tryThis } from "../fault-finding.ts";
import type { SeatsBeltsSpec } from "./spec.ts";

export const faults: SystemFaults<SeatsBeltsSpec> = {
  symptoms: (spec) => [beltStuck, buckleJammed, ...(spec.swivel ? [seatWarning] : [])],
};

const beltStuck: Symptom = {
  id: "seatsBelts.beltStuck",
  dangerous: false,
  causes: [cause("seatsBelts.twisted", 4), cause("seatsBelts.onSlope", 2), callFor("seatsBelts.broken", 1)],
  checks: [
    tryThis("seatsBelts.pullSlowly", ["seatsBelts.onSlope"], 2, 0),
    tryThis("seatsBelts.untwist", ["seatsBelts.twisted"], 3, 0),
    tryThis("seatsBelts.nobodySitsThere", ["seatsBelts.broken"], 1, 0, {
      after: ["seatsBelts.pullSlowly", "seatsBelts.untwist"],
    }),
    tryThis("seatsBelts.changeBelt", ["seatsBelts.broken"], 90, 2),
  ],
};

const buckleJammed: Symptom = {
  id: "seatsBelts.buckleJammed",
  dangerous: false,
  causes: [cause("seatsBelts.crumbs", 4), callFor("seatsBelts.buckleBroken", 1)],
  checks: [
    tryThis("seatsBelts.cleanBuckle", ["seatsBelts.crumbs"], 3, 0),
    tryThis("seatsBelts.changeBelt", ["seatsBelts.buckleBroken"], 90, 2),
  ],
};

const seatWarning: Symptom = {
  id: "seatsBelts.seatWarning",
  dangerous: false,
  causes: [cause("seatsBelts.notLocked", 5), callFor("seatsBelts.switch", 1)],
  checks: [
    tryThis("seatsBelts.turnAndClick", ["seatsBelts.notLocked"], 2, 0),
    tryThis("seatsBelts.testSwitch", ["seatsBelts.switch"], 20, 2),
  ],
};
