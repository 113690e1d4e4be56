import type { SystemPhysics } from "../contract.ts";
import type { HookUpSpec } from "./spec.ts";

export const physics: SystemPhysics<HookUpSpec> = { stores: () => [] };
