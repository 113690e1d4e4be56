import { countOf, look, OUT_AND_BACK } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { GarageSpec } from "./spec.ts";

export const checks: SystemChecks<GarageSpec> = {
  checks: (spec) => [
    look("garage.floor", OUT_AND_BACK, "inside", {
      part: "garage.floor",
      photograph: true,
      charge: "damage",
    }),
    look("garage.doors", OUT_AND_BACK, "nearside", { part: "garage.doorNearside", charge: "damage" }),
    ...(spec.tiePoints > 0
      ? [countOf("garage.tiePoints", OUT_AND_BACK, "inside", spec.tiePoints, { charge: "missingItem" })]
      : []),
  ],
};
