import { look, OUT_AND_BACK, read, restock } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { DefSpec } from "./spec.ts";

const RANGE = { unit: "km", min: 0, max: 30_000, tolerance: 200, step: 100, source: "practice" } as const;

export const checks: SystemChecks<DefSpec> = {
  checks: (spec) => [
    read("def.range", OUT_AND_BACK, "cab", RANGE, { charge: "def" }),
    look("def.cap", OUT_AND_BACK, spec.side, { part: "def.filler", charge: "missingItem" }),
    restock("def.can", "rear", 1),
    restock("def.gloves", "rear", 2),
  ],
};
