import type { SystemFaults } from "../contract.ts";
import type { SolarSpec } from "./spec.ts";

export const faults: SystemFaults<SolarSpec> = { symptoms: () => [] };
