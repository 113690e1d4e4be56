import type { SystemPhysics } from "../contract.ts";
import { readTank } from "../read-level.ts";
import type { WasteWaterSpec } from "./spec.ts";

/** The waste tank only holds what the taps give. */
export const physics: SystemPhysics<WasteWaterSpec> = {
  stores: (spec) => [{ store: "wasteWater", capacity: spec.litres, initial: 0 }],
  read: (spec, value, unit, sd) => readTank(spec.litres, "L", value, unit, sd),
};
