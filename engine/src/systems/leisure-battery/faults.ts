import type { SystemFaults } from "../contract.ts";
import type { LeisureBatterySpec } from "./spec.ts";

export const faults: SystemFaults<LeisureBatterySpec> = { symptoms: () => [] };
