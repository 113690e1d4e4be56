import type { SystemChecks } from "../contract.ts";
import type { KeysSpec } from "./spec.ts";

export const checks: SystemChecks<KeysSpec> = { checks: () => [] };
