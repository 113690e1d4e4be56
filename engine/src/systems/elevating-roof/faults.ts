import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { ElevatingRoofSpec } from "./spec.ts";

export const faults: SystemFaults<ElevatingRoofSpec> = {
  symptoms: () => [
    {
      id: "elevatingRoof.willNotClose",
      dangerous: false,
      causes: [
        cause("elevatingRoof.clothCaught", 4),
        cause("elevatingRoof.airTrapped", 3),
        cause("elevatingRoof.strutBroken", 1),
      ],
      checks: [
        tryThis("elevatingRoof.tuckCloth", ["elevatingRoof.clothCaught"], 3, 0),
        tryThis("elevatingRoof.openDoor", ["elevatingRoof.airTrapped"], 1, 0),
        tryThis("elevatingRoof.changeStrut", ["elevatingRoof.strutBroken"], 60, 2),
      ],
    },
  ],
};
