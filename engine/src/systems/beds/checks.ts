import { look, OUT_AND_BACK, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { BedsSpec } from "./spec.ts";

const BED = { part: "beds.bed" } as const;

export const checks: SystemChecks<BedsSpec> = {
  checks: (spec) => [
    look("beds.mattress", OUT_AND_BACK, "inside", { ...BED, photograph: true, charge: "cleaning" }),
    look("beds.slats", TURNAROUND, "inside", BED),
    look("beds.bedding", TURNAROUND, "inside", BED),
    ...(spec.upper ? [look("beds.upperMoves", TURNAROUND, "inside", BED)] : []),
    ...(spec.upper
      ? [look("beds.ladderAndNet", OUT_AND_BACK, "inside", { ...BED, charge: "missingItem" })]
      : []),
  ],
};
