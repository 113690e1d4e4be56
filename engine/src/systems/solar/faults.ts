import type { SystemFaults } from "../contract.ts";
import { callFor, cause, causeIn, tryThis } from "../fault-finding.ts";
import type { SolarSpec } from "./spec.ts";

export const faults: SystemFaults<SolarSpec> = {
  symptoms: () => [
    {
      id: "solar.givesNothing",
      dangerous: false,
      causes: [
        cause("solar.shade", 4),
        cause("solar.lowSun", 4),
        causeIn("leisureBattery", "solar.batteryFull", 3),
        cause("solar.dirt", 2),
        callFor("solar.fuse", 1),
      ],
      checks: [
        tryThis("solar.lookForShade", ["solar.shade"], 1, 0),
        tryThis("solar.lookAtSky", ["solar.lowSun"], 1, 0),
        tryThis("solar.readBattery", ["solar.batteryFull"], 1, 0, { mentions: ["leisureBattery"] }),
        tryThis("solar.lookFromAfar", ["solar.dirt"], 2, 0),
        tryThis("solar.testFuse", ["solar.fuse"], 15, 2),
      ],
    },
  ],
};
