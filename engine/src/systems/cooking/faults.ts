import type { SystemFaults } from "../contract.ts";
import type { CookingSpec } from "./spec.ts";

export const faults: SystemFaults<CookingSpec> = { symptoms: () => [] };
