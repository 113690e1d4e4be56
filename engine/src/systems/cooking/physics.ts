import type { SystemPhysics } from "../contract.ts";
import type { CookingSpec } from "./spec.ts";

export const physics: SystemPhysics<CookingSpec> = { stores: () => [] };
