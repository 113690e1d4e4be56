import type { SystemFaults } from "../contract.ts";
import type { FreshWaterSpec } from "./spec.ts";

export const faults: SystemFaults<FreshWaterSpec> = { symptoms: () => [] };
