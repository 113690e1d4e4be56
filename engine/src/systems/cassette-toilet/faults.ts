import type { SystemFaults } from "../contract.ts";
import type { CassetteToiletSpec } from "./spec.ts";

export const faults: SystemFaults<CassetteToiletSpec> = { symptoms: () => [] };
