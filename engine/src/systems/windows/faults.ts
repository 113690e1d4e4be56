import type { SystemFaults } from "../contract.ts";
import type { WindowsSpec } from "./spec.ts";

export const faults: SystemFaults<WindowsSpec> = { symptoms: () => [] };
