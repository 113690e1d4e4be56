import type { SystemPhysics } from "../contract.ts";
import type { HeatingSpec } from "./spec.ts";

export const physics: SystemPhysics<HeatingSpec> = { stores: () => [] };
