import type { SystemFaults } from "../contract.ts";
import type { DefSpec } from "./spec.ts";

export const faults: SystemFaults<DefSpec> = { symptoms: () => [] };
