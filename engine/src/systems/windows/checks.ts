import type { SystemChecks } from "../contract.ts";
import type { WindowsSpec } from "./spec.ts";

export const checks: SystemChecks<WindowsSpec> = { checks: () => [] };
