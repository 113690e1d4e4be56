import type { SystemPhysics } from "../contract.ts";
import type { LpgSpec } from "./spec.ts";

export const physics: SystemPhysics<LpgSpec> = { stores: () => [] };
