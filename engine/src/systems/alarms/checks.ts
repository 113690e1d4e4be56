import { countOf, DUE, look, OUT_AND_BACK, restock, TURNAROUND } from "../checking.ts";
import type { SystemChecks } from "../contract.ts";
import type { AlarmsSpec } from "./spec.ts";

export const checks: SystemChecks<AlarmsSpec> = {
  checks: (spec) => {
    const alarms = spec.smoke + spec.carbonMonoxide + spec.gas;
    return [
      ...(alarms > 0
        ? [
            countOf("alarms.count", OUT_AND_BACK, "inside", alarms, {
              part: "alarms.alarm",
              charge: "missingItem",
            }),
            look("alarms.test", ["out", "turnaround"], "inside", { part: "alarms.alarm" }),
            look("alarms.replaceBy", DUE, "inside", { part: "alarms.alarm" }),
            restock("alarms.cells", "inside", 1),
          ]
        : []),
      ...(spec.extinguishers > 0
        ? [
            countOf("alarms.extinguishers", OUT_AND_BACK, "inside", spec.extinguishers, {
              part: "alarms.extinguisher",
              charge: "missingItem",
            }),
            look("alarms.extinguisherGauge", TURNAROUND, "inside", { part: "alarms.extinguisher" }),
          ]
        : []),
      ...(spec.fireBlanket
        ? [look("alarms.blanket", OUT_AND_BACK, "inside", { charge: "missingItem" })]
        : []),
    ];
  },
};
