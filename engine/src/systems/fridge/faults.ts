import type { SystemFaults } from "../contract.ts";
import type { FridgeSpec } from "./spec.ts";

export const faults: SystemFaults<FridgeSpec> = { symptoms: () => [] };
