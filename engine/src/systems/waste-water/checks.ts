import type { SystemChecks } from "../contract.ts";
import type { WasteWaterSpec } from "./spec.ts";

export const checks: SystemChecks<WasteWaterSpec> = { checks: () => [] };
