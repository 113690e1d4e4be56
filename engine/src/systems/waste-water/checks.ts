import { look, OUT_AND_BACK, restock, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { WasteWaterSpec } from "./spec.ts";

const DRAIN = { part: "wasteWater.drain" } as const;

export const checks: SystemChecks<WasteWaterSpec> = {
  checks: (spec) => [
    look("wasteWater.isEmpty", OUT_AND_BACK, "underside", { ...DRAIN, charge: "wasteWater" }),
    look("wasteWater.valve", OUT_AND_BACK, "underside", { ...DRAIN, photograph: true, charge: "damage" }),
    look("wasteWater.gauge", TURNAROUND, "inside"),
    look("wasteWater.trapsWet", TURNAROUND, "inside"),
    restock("wasteWater.cleaner", "inside", 1),
    ...(spec.heated ? [look("wasteWater.heater", TURNAROUND, "underside", DRAIN)] : []),
  ],
};
