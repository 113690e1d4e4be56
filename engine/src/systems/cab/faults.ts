import type { SystemFaults } from "../contract.ts";
import type { CabSpec } from "./spec.ts";

export const faults: SystemFaults<CabSpec> = { symptoms: () => [] };
