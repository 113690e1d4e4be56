import type { SystemChecks } from "../contract.ts";
import type { HeatingSpec } from "./spec.ts";

export const checks: SystemChecks<HeatingSpec> = { checks: () => [] };
