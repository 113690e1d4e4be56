import type { SystemFaults } from "../contract.ts";
import type { HotWaterSpec } from "./spec.ts";

export const faults: SystemFaults<HotWaterSpec> = { symptoms: () => [] };
