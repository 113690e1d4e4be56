import type { SystemPhysics } from "../contract.ts";
import type { LeisureBatterySpec } from "./spec.ts";

export const physics: SystemPhysics<LeisureBatterySpec> = { stores: () => [] };
