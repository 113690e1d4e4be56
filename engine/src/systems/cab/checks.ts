import { countOf, look, OUT_AND_BACK, read, restock, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { CabSpec } from "./spec.ts";

const ODOMETER = { unit: "km", min: 0, max: 999_999, tolerance: 0, step: 1, source: "practice" } as const;
const BODY = { photograph: true, charge: "damage" } as const;

export const checks: SystemChecks<CabSpec> = {
  checks: (spec) => [
    look("cab.front", OUT_AND_BACK, "front", BODY),
    look("cab.bodyNearside", OUT_AND_BACK, "nearside", BODY),
    look("cab.rear", OUT_AND_BACK, "rear", BODY),
    look("cab.bodyOffside", OUT_AND_BACK, "offside", BODY),
    look("cab.roof", OUT_AND_BACK, "roof", BODY),
    look("cab.underside", OUT_AND_BACK, "underside", BODY),
    look("cab.clean", ["back", "turnaround"], "inside", { photograph: true, charge: "cleaning" }),
    read("cab.odometer", OUT_AND_BACK, "cab", ODOMETER, {
      part: "cab.dashboard",
      photograph: true,
      charge: "mileage",
    }),
    look("cab.warningLights", ["out", "back", "turnaround"], "cab", { part: "cab.dashboard" }),
    look("cab.wipersAndHorn", TURNAROUND, "cab"),
    look("cab.fluids", TURNAROUND, "front"),
    look("cab.tools", OUT_AND_BACK, "cab", { charge: "missingItem" }),
    restock("cab.screenwash", "cab", 1),
    restock("cab.bulbs", "cab", 1),
    ...(spec.ramps > 0
      ? [countOf("cab.ramps", OUT_AND_BACK, "rear", spec.ramps, { charge: "missingItem" })]
      : []),
    ...(spec.warningTriangles > 0
      ? [countOf("cab.triangles", OUT_AND_BACK, "cab", spec.warningTriangles, { charge: "missingItem" })]
      : []),
    ...(spec.highVisVests > 0
      ? [countOf("cab.vests", OUT_AND_BACK, "cab", spec.highVisVests, { charge: "missingItem" })]
      : []),
  ],
};
