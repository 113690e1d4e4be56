import type { SystemChecks } from "../contract.ts";
import type { SeatsBeltsSpec } from "./spec.ts";

export const checks: SystemChecks<SeatsBeltsSpec> = { checks: () => [] };
