import type { SystemPhysics } from "../contract.ts";
import type { LightsSpec } from "./spec.ts";

export const physics: SystemPhysics<LightsSpec> = { stores: () => [] };
