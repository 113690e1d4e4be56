import type { SystemFaults } from "../contract.ts";
import type { AwningSpec } from "./spec.ts";

export const faults: SystemFaults<AwningSpec> = { symptoms: () => [] };
