import { countOf, DUE, look, OUT_AND_BACK, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { HookUpSpec } from "./spec.ts";

export const checks: SystemChecks<HookUpSpec> = {
  checks: (spec) => {
    const unit = { part: "hookUp.consumerUnit" } as const;
    return [
      look("hookUp.inlet", OUT_AND_BACK, spec.side, {
        part: "hookUp.inlet",
        photograph: true,
        charge: "damage",
      }),
      countOf("hookUp.leads", OUT_AND_BACK, spec.side, spec.leads, { charge: "missingItem" }),
      countOf("hookUp.adaptors", OUT_AND_BACK, spec.side, spec.adaptors, { charge: "missingItem" }),
      look("hookUp.leadSound", ["out", "turnaround"], spec.side),
      look("hookUp.rcdTest", TURNAROUND, "inside", unit),
      look("hookUp.fixedWiring", DUE, "inside", unit),
      look("hookUp.leadTest", DUE, spec.side),
    ].filter((check) => check.kind !== "count" || (check.expected ?? 0) > 0);
  },
};
