import type { SystemFaults } from "../contract.ts";
import { callFor, cause, tryThis } from "../fault-finding.ts";
import type { DoorSpec } from "./spec.ts";

export const faults: SystemFaults<DoorSpec> = {
  symptoms: (spec) => [
    {
      id: "door.willNotShut",
      dangerous: false,
      causes: [
        cause("door.inTheWay", 4),
        cause("door.bodyTwisted", 3),
        spec.type === "sliding" ? cause("door.grit", 2) : callFor("door.catch", 2),
      ],
      checks: [
        tryThis("door.lookInGap", ["door.inTheWay"], 1, 0),
        tryThis("door.parkAgain", ["door.bodyTwisted"], 10, 0),
        tryThis(
          spec.type === "sliding" ? "door.brushRail" : "door.setCatch",
          [spec.type === "sliding" ? "door.grit" : "door.catch"],
          10,
          spec.type === "sliding" ? 0 : 2,
        ),
      ],
    },
    ...(spec.flyScreen
      ? [
          {
            id: "door.flyScreenStuck",
            dangerous: false,
            causes: [cause("door.screenOffRail", 4), cause("door.screenTorn", 1)],
            checks: [
              tryThis("door.feedBack", ["door.screenOffRail"], 5, 1),
              tryThis("door.tellUs", ["door.screenTorn"], 1, 0),
            ],
          },
        ]
      : []),
  ],
};
