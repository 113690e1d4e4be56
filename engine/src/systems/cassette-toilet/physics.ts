import type { SystemPhysics } from "../contract.ts";
import type { CassetteToiletSpec } from "./spec.ts";

export const physics: SystemPhysics<CassetteToiletSpec> = { stores: () => [] };
