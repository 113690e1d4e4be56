import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { ChargingSpec } from "./spec.ts";

export const faults: SystemFaults<ChargingSpec> = {
  symptoms: (spec) => [
    {
      id: "charging.doesNotCharge",
      dangerous: false,
      causes: [
        ...(spec.mainsChargerA > 0 ? [cause("charging.chargerOff", 3), cause("charging.noMains", 3)] : []),
        ...(spec.drivingCharge === "none"
          ? []
          : [cause("charging.drivingFuse", 2), cause("charging.shortDrive", 3)]),
        cause("charging.chargerBroken", 1),
      ],
      checks: [
        ...(spec.mainsChargerA > 0
          ? [
              tryThis("charging.mainsThere", ["charging.noMains"], 2, 0, { mentions: ["hookUp"] }),
              tryThis("charging.chargerOn", ["charging.chargerOff"], 2, 0, {
                after: ["charging.mainsThere"],
              }),
            ]
          : []),
        ...(spec.drivingCharge === "none"
          ? []
          : [
              tryThis("charging.howLongDriven", ["charging.shortDrive"], 1, 0),
              tryThis("charging.testFuses", ["charging.drivingFuse"], 20, 2),
            ]),
        tryThis("charging.measure", ["charging.chargerBroken"], 20, 2),
      ],
    },
  ],
};
