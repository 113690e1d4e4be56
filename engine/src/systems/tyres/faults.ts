import type { SystemFaults } from "../contract.ts";
import { cause, tryThis } from "../fault-finding.ts";
import type { TyresSpec } from "./spec.ts";

export const faults: SystemFaults<TyresSpec> = {
  symptoms: () => [
    {
      id: "tyres.warning",
      dangerous: false,
      causes: [cause("tyres.coldMorning", 4), cause("tyres.slowPuncture", 3)],
      checks: [
        tryThis("tyres.lookRound", ["tyres.slowPuncture"], 2, 0),
        tryThis("tyres.measureCold", ["tyres.coldMorning", "tyres.slowPuncture"], 10, 1, {
          after: ["tyres.lookRound"],
        }),
        tryThis("tyres.tyreFitter", ["tyres.slowPuncture"], 60, 2),
      ],
    },
    {
      id: "tyres.shakes",
      dangerous: true,
      causes: [cause("tyres.looseNuts", 1), cause("tyres.lostWeight", 2)],
      checks: [],
    },
  ],
};
