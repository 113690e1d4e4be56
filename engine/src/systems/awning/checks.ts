import type { SystemChecks } from "../contract.ts";
import type { AwningSpec } from "./spec.ts";

export const checks: SystemChecks<AwningSpec> = { checks: () => [] };
