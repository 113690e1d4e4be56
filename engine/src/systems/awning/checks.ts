import { countOf, DUE, look, OUT_AND_BACK, restock } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { AwningSpec } from "./spec.ts";

export const checks: SystemChecks<AwningSpec> = {
  checks: (spec) => {
    const cassette = { part: "awning.cassette" } as const;
    const evidence = { ...cassette, photograph: true, charge: "damage" } as const;
    return [
      look("awning.fullyOut", OUT_AND_BACK, spec.side, evidence),
      look("awning.arms", OUT_AND_BACK, spec.side, evidence),
      countOf("awning.crank", OUT_AND_BACK, "inside", 1, { charge: "missingItem" }),
      countOf("awning.straps", OUT_AND_BACK, "inside", 2, { charge: "missingItem" }),
      restock("awning.pegs", "inside", 8),
      look("awning.fixings", DUE, spec.side, cassette),
    ];
  },
};
