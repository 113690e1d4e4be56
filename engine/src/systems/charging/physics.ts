import type { SystemPhysics } from "../contract.ts";
import type { ChargingSpec } from "./spec.ts";

export const physics: SystemPhysics<ChargingSpec> = { stores: () => [] };
