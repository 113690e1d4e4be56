import type { SystemFaults } from "../contract.ts";
import type { HeatingSpec } from "./spec.ts";

export const faults: SystemFaults<HeatingSpec> = { symptoms: () => [] };
