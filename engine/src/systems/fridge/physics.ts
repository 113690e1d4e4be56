import type { SystemPhysics } from "../contract.ts";
import type { FridgeSpec } from "./spec.ts";

export const physics: SystemPhysics<FridgeSpec> = { stores: () => [] };
