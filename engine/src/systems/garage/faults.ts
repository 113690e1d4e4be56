import type { SystemFaults } from "../contract.ts";
import { cause, causeIn, tryThis } from "../fault-finding.ts";
import type { GarageSpec } from "./spec.ts";

export const faults: SystemFaults<GarageSpec> = {
  symptoms: () => [
    {
      id: "garage.wet",
      dangerous: false,
      causes: [
        cause("garage.cornerOpen", 5),
        cause("garage.sealPinched", 2),
        causeIn("freshWater", "garage.waterPipe", 1),
      ],
      checks: [
        tryThis("garage.shutBothCorners", ["garage.cornerOpen"], 2, 0),
        tryThis("garage.wipeSeal", ["garage.sealPinched"], 3, 0),
        tryThis("garage.feelPipes", ["garage.waterPipe"], 5, 0, { mentions: ["freshWater"] }),
      ],
    },
  ],
};
