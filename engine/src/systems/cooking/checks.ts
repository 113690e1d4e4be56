import { look, OUT_AND_BACK, restock, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { CookingSpec } from "./spec.ts";

const HOB = { part: "cooking.hob" } as const;

export const checks: SystemChecks<CookingSpec> = {
  checks: (spec) => [
    look(spec.energy === "gas" ? "cooking.burners" : "cooking.plates", TURNAROUND, "inside", HOB),
    look("cooking.hob", OUT_AND_BACK, "inside", { ...HOB, photograph: true, charge: "damage" }),
    look("cooking.clean", ["back", "turnaround"], "inside", { ...HOB, charge: "cleaning" }),
    ...(spec.energy === "gas" ? [restock("cooking.matches", "inside", 1)] : []),
  ],
};
