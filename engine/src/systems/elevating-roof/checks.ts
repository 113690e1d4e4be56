import { look, OUT_AND_BACK, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { ElevatingRoofSpec } from "./spec.ts";

const ROOF = { part: "elevatingRoof.roof" } as const;

export const checks: SystemChecks<ElevatingRoofSpec> = {
  checks: () => [
    look("elevatingRoof.cloth", OUT_AND_BACK, "roof", { ...ROOF, photograph: true, charge: "damage" }),
    look("elevatingRoof.latches", OUT_AND_BACK, "roof", { ...ROOF, photograph: true, charge: "damage" }),
    look("elevatingRoof.dry", TURNAROUND, "roof", ROOF),
  ],
};
