import { countOf, look, OUT_AND_BACK, restock, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { CassetteToiletSpec } from "./spec.ts";

export const checks: SystemChecks<CassetteToiletSpec> = {
  checks: (spec) => [
    look("cassetteToilet.isEmpty", OUT_AND_BACK, spec.side, {
      part: "cassetteToilet.door",
      charge: "cassette",
    }),
    look("cassetteToilet.bladeFree", OUT_AND_BACK, spec.side, {
      part: "cassetteToilet.door",
      photograph: true,
      charge: "damage",
    }),
    ...(spec.spareCassettes > 0
      ? [
          countOf("cassetteToilet.spares", OUT_AND_BACK, spec.side, spec.spareCassettes, {
            charge: "missingItem",
          }),
        ]
      : []),
    look("cassetteToilet.flush", TURNAROUND, "inside", { part: "cassetteToilet.bowl" }),
    look("cassetteToilet.sealGreased", TURNAROUND, spec.side, { part: "cassetteToilet.door" }),
    restock("cassetteToilet.fluid", "inside", 6),
    restock("cassetteToilet.paper", "inside", 2),
    restock("cassetteToilet.gloves", spec.side, 4),
  ],
};
