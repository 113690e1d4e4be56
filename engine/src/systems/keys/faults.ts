import type { SystemFaults } from "../contract.ts";
import type { KeysSpec } from "./spec.ts";

export const faults: SystemFaults<KeysSpec> = { symptoms: () => [] };
