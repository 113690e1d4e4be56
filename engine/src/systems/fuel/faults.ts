import type { SystemFaults } from "../contract.ts";
import type { FuelSpec } from "./spec.ts";

export const faults: SystemFaults<FuelSpec> = { symptoms: () => [] };
