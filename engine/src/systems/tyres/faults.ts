import type { SystemFaults } from "../contract.ts";
import type { TyresSpec } from "./spec.ts";

export const faults: SystemFaults<TyresSpec> = { symptoms: () => [] };
