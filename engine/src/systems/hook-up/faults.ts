import type { SystemFaults } from "../contract.ts";
import type { HookUpSpec } from "./spec.ts";

export const faults: SystemFaults<HookUpSpec> = { symptoms: () => [] };
