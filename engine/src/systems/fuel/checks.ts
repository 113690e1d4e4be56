import { EIGHTHS, look, OUT_AND_BACK, read } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { FuelSpec } from "./spec.ts";

export const checks: SystemChecks<FuelSpec> = {
  checks: (spec) => [
    read("fuel.gauge", OUT_AND_BACK, "cab", EIGHTHS, { photograph: true, charge: "fuel" }),
    look("fuel.cap", OUT_AND_BACK, spec.side, {
      part: "fuel.filler",
      photograph: true,
      charge: "missingItem",
    }),
  ],
};
