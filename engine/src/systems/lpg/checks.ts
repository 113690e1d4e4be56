import type { SystemChecks } from "../contract.ts";
import type { LpgSpec } from "./spec.ts";

export const checks: SystemChecks<LpgSpec> = { checks: () => [] };
