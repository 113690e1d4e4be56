import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { TelevisionSpec } from "./spec.ts";

export const faults: SystemFaults<TelevisionSpec> = {
  symptoms: () => [
    {
      id: "television.noPicture",
      dangerous: false,
      causes: [
        cause("television.notTuned", 4),
        cause("television.boosterOff", 3),
        cause("television.inTheShade", 2),
      ],
      checks: [
        tryThis("television.pressBooster", ["television.boosterOff"], 1, 0),
        tryThis("television.tuneAgain", ["television.notTuned"], 5, 0, {
          after: ["television.pressBooster"],
        }),
        tryThis("television.moveVan", ["television.inTheShade"], 10, 0),
      ],
    },
  ],
};
