import type { SystemChecks } from "../contract.ts";
import type { FreshWaterSpec } from "./spec.ts";

export const checks: SystemChecks<FreshWaterSpec> = { checks: () => [] };
