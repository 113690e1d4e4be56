import type { SystemFaults } from "../contract.ts";
import type { ChargingSpec } from "./spec.ts";

export const faults: SystemFaults<ChargingSpec> = { symptoms: () => [] };
