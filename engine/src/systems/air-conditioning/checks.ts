import { DUE, look, OUT_AND_BACK, restock, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { AirConditioningSpec } from "./spec.ts";

const OUTLET = { part: "airConditioning.outlet" } as const;

export const checks: SystemChecks<AirConditioningSpec> = {
  checks: (spec) => [
    look("airConditioning.roofUnit", OUT_AND_BACK, "roof", {
      part: "airConditioning.roofUnit",
      photograph: true,
      charge: "damage",
    }),
    look("airConditioning.runsCold", TURNAROUND, "inside", OUTLET),
    look("airConditioning.filterClean", TURNAROUND, "inside", OUTLET),
    ...(spec.remote
      ? [
          look("airConditioning.remote", OUT_AND_BACK, "inside", { charge: "missingItem" }),
          restock("airConditioning.remoteCells", "inside", 2),
        ]
      : []),
    look("airConditioning.service", DUE, "roof", { part: "airConditioning.roofUnit" }),
  ],
};
