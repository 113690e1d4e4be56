import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { CabSpec } from "./spec.ts";

export const faults: SystemFaults<CabSpec> = {
  symptoms: (spec) => [
    {
      id: "cab.redLight",
      dangerous: true,
      causes: [cause("cab.oilOrBrakesOrHeat", 1)],
      checks: [],
    },
    {
      id: "cab.amberLight",
      dangerous: false,
      causes: [cause("cab.serviceDue", 3), cause("cab.exhaustSystem", 3), cause("cab.tyrePressure", 2)],
      checks: [
        tryThis("cab.readMessage", ["cab.serviceDue", "cab.exhaustSystem", "cab.tyrePressure"], 1, 0),
        tryThis("cab.workshopReads", ["cab.exhaustSystem", "cab.serviceDue"], 30, 2, {
          after: ["cab.readMessage"],
        }),
      ],
    },
    ...(spec.reversingCamera
      ? [
          {
            id: "cab.cameraDead",
            dangerous: false,
            causes: [cause("cab.lensDirty", 3), cause("cab.cameraFuse", 1)],
            checks: [
              tryThis("cab.wipeLens", ["cab.lensDirty"], 1, 0),
              tryThis("cab.changeFuse", ["cab.cameraFuse"], 15, 2),
            ],
          },
        ]
      : []),
  ],
};
