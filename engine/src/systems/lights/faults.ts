import type { SystemFaults } from "../contract.ts";
import type { LightsSpec } from "./spec.ts";

export const faults: SystemFaults<LightsSpec> = { symptoms: () => [] };
