import type { SystemPhysics } from "../contract.ts";
import type { WasteWaterSpec } from "./spec.ts";

export const physics: SystemPhysics<WasteWaterSpec> = { stores: () => [] };
