import { look, OUT_AND_BACK, restock, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { TelevisionSpec } from "./spec.ts";

export const checks: SystemChecks<TelevisionSpec> = {
  checks: (spec) => [
    look("television.screen", OUT_AND_BACK, "inside", { charge: "damage" }),
    look("television.remote", OUT_AND_BACK, "inside", { charge: "missingItem" }),
    restock("television.cells", "inside", 2),
    ...(spec.aerial === "fixed"
      ? []
      : [look("television.aerialMoves", TURNAROUND, "roof", { part: "television.aerial" })]),
  ],
};
