import type { SystemChecks } from "../contract.ts";
import type { DefSpec } from "./spec.ts";

export const checks: SystemChecks<DefSpec> = { checks: () => [] };
