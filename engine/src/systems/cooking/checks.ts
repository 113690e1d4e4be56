import type { SystemChecks } from "../contract.ts";
import type { CookingSpec } from "./spec.ts";

export const checks: SystemChecks<CookingSpec> = { checks: () => [] };
