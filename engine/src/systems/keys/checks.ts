import { countOf, look, OUT_AND_BACK, restock, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { KeysSpec } from "./spec.ts";

export const checks: SystemChecks<KeysSpec> = {
  checks: (spec) => [
    countOf("keys.count", OUT_AND_BACK, "cab", spec.sets * spec.keysPerSet, {
      part: "keys.ignition",
      photograph: true,
      charge: "missingItem",
    }),
    look("keys.everyLock", TURNAROUND, "nearside"),
    restock("keys.cell", "cab", 1),
  ],
};
