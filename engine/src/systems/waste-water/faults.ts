import type { SystemFaults } from "../contract.ts";
import type { WasteWaterSpec } from "./spec.ts";

export const faults: SystemFaults<WasteWaterSpec> = { symptoms: () => [] };
