import type { SystemPhysics } from "../contract.ts";
import type { HotWaterSpec } from "./spec.ts";

export const physics: SystemPhysics<HotWaterSpec> = { stores: () => [] };
