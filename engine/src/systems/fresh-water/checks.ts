import { countOf, EIGHTHS, look, OUT_AND_BACK, read, restock, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { FreshWaterSpec } from "./spec.ts";

export const checks: SystemChecks<FreshWaterSpec> = {
  checks: (spec) => [
    read("freshWater.level", OUT_AND_BACK, "inside", { ...EIGHTHS, tolerance: 0.13, step: 0.25 }),
    look("freshWater.cap", OUT_AND_BACK, spec.side, {
      part: "freshWater.filler",
      photograph: true,
      charge: "missingItem",
    }),
    look("freshWater.drainShut", TURNAROUND, "underside", { part: "freshWater.drain" }),
    look("freshWater.noLeaks", TURNAROUND, "inside"),
    look("freshWater.flushed", TURNAROUND, "inside"),
    look("freshWater.sanitised", ["due"], "inside"),
    countOf("freshWater.hose", OUT_AND_BACK, spec.side, 1, { charge: "missingItem" }),
    restock("freshWater.sanitiser", "inside", 1),
    look("freshWater.filter", ["due"], "inside"),
  ],
};
