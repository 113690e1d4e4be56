import type { SystemFaults } from "../contract.ts";
import type { LpgSpec } from "./spec.ts";

export const faults: SystemFaults<LpgSpec> = { symptoms: () => [] };
