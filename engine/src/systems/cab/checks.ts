import type { SystemChecks } from "../contract.ts";
import type { CabSpec } from "./spec.ts";

export const checks: SystemChecks<CabSpec> = { checks: () => [] };
