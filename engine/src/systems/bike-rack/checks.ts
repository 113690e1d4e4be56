import { DUE, look, OUT_AND_BACK, restock } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { BikeRackSpec } from "./spec.ts";

const RACK = { part: "bikeRack.rack" } as const;

export const checks: SystemChecks<BikeRackSpec> = {
  checks: () => [
    look("bikeRack.armsAndStraps", OUT_AND_BACK, "rear", { ...RACK, photograph: true, charge: "damage" }),
    look("bikeRack.wall", OUT_AND_BACK, "rear", { ...RACK, photograph: true, charge: "damage" }),
    look("bikeRack.bolts", DUE, "rear", RACK),
    look("bikeRack.board", OUT_AND_BACK, "rear", { charge: "missingItem" }),
    restock("bikeRack.spareStraps", "rear", 2),
  ],
};
