import { countOf, DUE, EVERY_TIME, look, OUT_AND_BACK, read, restock, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { LpgSpec } from "./spec.ts";

export const checks: SystemChecks<LpgSpec> = {
  checks: (spec) => {
    const locker = { part: "lpg.locker" } as const;
    // bottles are weighed, a tank gauge reads in steps
    const tolerance = spec.arrangement === "exchange" ? 0.3 : spec.kgEach * 0.1;
    const content = {
      unit: "kg",
      min: 0,
      max: spec.cylinders * spec.kgEach,
      tolerance,
      step: 0.1,
      source: "practice",
    } as const;
    return [
      read("lpg.content", EVERY_TIME, spec.side, content, { ...locker, charge: "lpg" }),
      ...(spec.arrangement === "exchange"
        ? [
            countOf("lpg.bottles", OUT_AND_BACK, spec.side, spec.cylinders, {
              ...locker,
              charge: "missingItem",
            }),
            look("lpg.strapped", EVERY_TIME, spec.side, { ...locker, photograph: true }),
          ]
        : [
            look("lpg.fillerCap", OUT_AND_BACK, spec.side, {
              part: "lpg.filler",
              photograph: true,
              charge: "missingItem",
            }),
            countOf("lpg.adaptors", OUT_AND_BACK, spec.side, 4, { charge: "missingItem" }),
          ]),
      look("lpg.leakFluid", TURNAROUND, spec.side, locker),
      restock("lpg.seals", spec.side, 2),
      restock("lpg.fluidBottle", spec.side, 1),
      look("lpg.dropVents", TURNAROUND, "underside"),
      look("lpg.hoseDate", DUE, spec.side, locker),
      look("lpg.yearlyCheck", DUE, spec.side, locker),
    ];
  },
};
