import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { BikeRackSpec } from "./spec.ts";

export const faults: SystemFaults<BikeRackSpec> = {
  symptoms: () => [
    {
      id: "bikeRack.rattles",
      dangerous: false,
      causes: [cause("bikeRack.strapLoose", 5), cause("bikeRack.boltLoose", 2)],
      checks: [
        tryThis("bikeRack.tightenStraps", ["bikeRack.strapLoose"], 5, 0),
        tryThis("bikeRack.bikesOff", ["bikeRack.boltLoose"], 10, 1, { after: ["bikeRack.tightenStraps"] }),
        tryThis("bikeRack.tightenBolts", ["bikeRack.boltLoose"], 20, 2),
      ],
    },
  ],
};
