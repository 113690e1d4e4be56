import type { Finding } from "../../base/finding.ts";
import type { OverrideRole } from "./types.ts";

/**
 * Whether this role may override a finding, by what the finding rests on: law and safety never, by nobody;
 * cover only the insurer; policy and physics (a forecast, not a rule) a named person at the desk.
 */
export function mayOverride(finding: Pick<Finding, "basis">, role: OverrideRole): boolean {
  switch (finding.basis) {
    case "law":
    case "safety":
      return false;
    case "cover":
      return role === "insurer";
    case "policy":
    case "physics":
      return role === "desk" || role === "manager";
  }
}
