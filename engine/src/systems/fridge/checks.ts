import { look, OUT_AND_BACK, read, restock, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { FridgeSpec } from "./spec.ts";

const FRIDGE = { part: "fridge.fridge" } as const;
const INSIDE = { unit: "°C", min: -5, max: 40, tolerance: 1, step: 0.5, source: "practice" } as const;

export const checks: SystemChecks<FridgeSpec> = {
  checks: (spec) => [
    read("fridge.temperature", TURNAROUND, "inside", INSIDE, FRIDGE),
    ...(spec.type === "absorption"
      ? [
          look("fridge.lightsOnGas", TURNAROUND, "inside", FRIDGE),
          look("fridge.vents", OUT_AND_BACK, spec.side, {
            part: "fridge.vents",
            photograph: true,
            charge: "damage",
          }),
        ]
      : []),
    look("fridge.doorAndCatch", OUT_AND_BACK, "inside", { ...FRIDGE, photograph: true, charge: "damage" }),
    look("fridge.clean", ["back", "turnaround"], "inside", { ...FRIDGE, charge: "cleaning" }),
    restock("fridge.deodorant", "inside", 1),
  ],
};
