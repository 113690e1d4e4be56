import { countOf, look, OUT_AND_BACK, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { LevellingSpec } from "./spec.ts";

const MISSING = { charge: "missingItem" } as const;

export const checks: SystemChecks<LevellingSpec> = {
  checks: (spec) => [
    ...(spec.ramps > 0 ? [countOf("levelling.ramps", OUT_AND_BACK, "rear", spec.ramps, MISSING)] : []),
    ...(spec.chocks > 0 ? [countOf("levelling.chocks", OUT_AND_BACK, "rear", spec.chocks, MISSING)] : []),
    ...(spec.jacks === "none"
      ? []
      : [
          look("levelling.jacks", OUT_AND_BACK, "underside", {
            part: "levelling.jacks",
            photograph: true,
            charge: "damage",
          }),
          look("levelling.jacksCycle", TURNAROUND, "underside", { part: "levelling.jacks" }),
        ]),
  ],
};
