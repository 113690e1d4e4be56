import type { SystemFaults } from "../contract.ts";
import type { SeatsBeltsSpec } from "./spec.ts";

export const faults: SystemFaults<SeatsBeltsSpec> = { symptoms: () => [] };
