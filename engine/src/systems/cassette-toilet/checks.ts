import type { SystemChecks } from "../contract.ts";
import type { CassetteToiletSpec } from "./spec.ts";

export const checks: SystemChecks<CassetteToiletSpec> = { checks: () => [] };
