import type { SystemPhysics } from "../contract.ts";
import type { FuelSpec } from "./spec.ts";

export const physics: SystemPhysics<FuelSpec> = { stores: () => [] };
