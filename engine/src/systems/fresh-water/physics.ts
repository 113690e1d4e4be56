import type { SystemPhysics } from "../contract.ts";
import type { FreshWaterSpec } from "./spec.ts";

export const physics: SystemPhysics<FreshWaterSpec> = { stores: () => [] };
