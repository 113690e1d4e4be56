import type { SystemFaults } from "../contract.ts";
import { callFor, cause, tryThis } from "../fault-finding.ts";
import type { ElevatingRoofSpec } from "./spec.ts";

export const faults: SystemFaults<ElevatingRoofSpec> = {
  symptoms: () => [
    {
      id: "elevatingRoof.willNotClose",
      dangerous: false,
      causes: [
        cause("elevatingRoof.clothCaught", 4),
        cause("elevatingRoof.airTrapped", 3),
        cause("elevatingRoof.thingsOnBed", 2),
        callFor("elevatingRoof.strutBroken", 1),
      ],
      checks: [
        tryThis("elevatingRoof.openDoor", ["elevatingRoof.airTrapped"], 1, 0),
        tryThis("elevatingRoof.clearBed", ["elevatingRoof.thingsOnBed"], 3, 0),
        tryThis("elevatingRoof.tuckCloth", ["elevatingRoof.clothCaught"], 3, 1),
        tryThis("elevatingRoof.changeStrut", ["elevatingRoof.strutBroken"], 60, 2),
      ],
    },
  ],
};
