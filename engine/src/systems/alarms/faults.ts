import type { SystemFaults } from "../contract.ts";
import type { AlarmsSpec } from "./spec.ts";

export const faults: SystemFaults<AlarmsSpec> = { symptoms: () => [] };
