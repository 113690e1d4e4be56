import type { SystemPhysics } from "../contract.ts";
import type { SolarSpec } from "./spec.ts";

export const physics: SystemPhysics<SolarSpec> = { stores: () => [] };
