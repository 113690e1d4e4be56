import type { SystemChecks } from "../contract.ts";
import type { LeisureBatterySpec } from "./spec.ts";

export const checks: SystemChecks<LeisureBatterySpec> = { checks: () => [] };
