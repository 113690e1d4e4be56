import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { SeatsBeltsSpec } from "./spec.ts";

export const faults: SystemFaults<SeatsBeltsSpec> = {
  symptoms: (spec) => [
    {
      id: "seatsBelts.beltStuck",
      dangerous: false,
      causes: [cause("seatsBelts.twisted", 4), cause("seatsBelts.onSlope", 2), cause("seatsBelts.broken", 1)],
      checks: [
        tryThis("seatsBelts.untwist", ["seatsBelts.twisted"], 3, 0),
        tryThis("seatsBelts.pullSlowly", ["seatsBelts.onSlope"], 2, 0),
        tryThis("seatsBelts.nobodySitsThere", ["seatsBelts.broken"], 1, 2),
      ],
    },
    ...(spec.swivel
      ? [
          {
            id: "seatsBelts.seatWarning",
            dangerous: false,
            causes: [cause("seatsBelts.notLocked", 5), cause("seatsBelts.switch", 1)],
            checks: [
              tryThis("seatsBelts.turnAndClick", ["seatsBelts.notLocked"], 2, 0),
              tryThis("seatsBelts.testSwitch", ["seatsBelts.switch"], 20, 2),
            ],
          },
        ]
      : []),
  ],
};
