import type { SystemFaults } from "../contract.ts";
import type { StepSpec } from "./spec.ts";

export const faults: SystemFaults<StepSpec> = { symptoms: () => [] };
