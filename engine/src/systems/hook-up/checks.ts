import type { SystemChecks } from "../contract.ts";
import type { HookUpSpec } from "./spec.ts";

export const checks: SystemChecks<HookUpSpec> = { checks: () => [] };
