import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { CassetteToiletSpec } from "./spec.ts";

export const faults: SystemFaults<CassetteToiletSpec> = {
  symptoms: (spec) => [
    {
      id: "cassetteToilet.willNotComeOut",
      dangerous: false,
      causes: [
        cause("cassetteToilet.bladeOpen", 5),
        cause("cassetteToilet.catchHolds", 2),
        cause("cassetteToilet.notLevel", 1),
      ],
      checks: [
        tryThis("cassetteToilet.openAndClose", ["cassetteToilet.bladeOpen"], 2, 0),
        tryThis("cassetteToilet.liftCatch", ["cassetteToilet.catchHolds"], 2, 0, {
          after: ["cassetteToilet.openAndClose"],
        }),
        tryThis("cassetteToilet.parkLevel", ["cassetteToilet.notLevel"], 10, 0),
        tryThis("cassetteToilet.freeIt", ["cassetteToilet.bladeOpen"], 30, 2),
      ],
    },
    {
      id: "cassetteToilet.noFlush",
      dangerous: false,
      causes: [
        spec.flushFrom === "own"
          ? cause("cassetteToilet.flushTankEmpty", 4)
          : cause("cassetteToilet.noWater", 4, { store: "freshWater", times: 4 }),
        cause("cassetteToilet.noPower", 2, { store: "battery12", times: 3 }),
        cause("cassetteToilet.flushPump", 1),
      ],
      checks: [
        spec.flushFrom === "own"
          ? tryThis("cassetteToilet.fillFlushTank", ["cassetteToilet.flushTankEmpty"], 3, 0)
          : tryThis("cassetteToilet.doTapsRun", ["cassetteToilet.noWater"], 1, 0, {
              mentions: ["freshWater"],
            }),
        tryThis("cassetteToilet.doLightsWork", ["cassetteToilet.noPower"], 1, 0, { mentions: ["lights"] }),
        tryThis("cassetteToilet.testPump", ["cassetteToilet.flushPump"], 20, 2),
      ],
    },
  ],
};
