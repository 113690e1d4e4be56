import type { SystemChecks } from "../contract.ts";
import type { FuelSpec } from "./spec.ts";

export const checks: SystemChecks<FuelSpec> = { checks: () => [] };
