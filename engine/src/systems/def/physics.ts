import type { SystemPhysics } from "../contract.ts";
import type { DefSpec } from "./spec.ts";

export const physics: SystemPhysics<DefSpec> = { stores: () => [] };
