import { DUE, look, OUT_AND_BACK, read, TURNAROUND } from "../checking.ts";
import type { Check, SystemChecks } from "../contract.ts";
import type { TyresSpec } from "./spec.ts";

/** Law 1.6 mm, usual policy 3 mm, 4 mm for winter (common practice). */
const TREAD = { unit: "mm", min: 0, max: 12, tolerance: 0.5, step: 0.1, source: "practice" } as const;
const PRESSURE = { unit: "bar", min: 0, max: 8, tolerance: 0.2, step: 0.1, source: "practice" } as const;

export const checks: SystemChecks<TyresSpec> = {
  checks: (spec) => [
    ...WHEELS.flatMap(wheelChecks),
    look("tyres.nutMarkers", TURNAROUND, "nearside"),
    look("tyres.valves", TURNAROUND, "nearside"),
    ...(spec.spare === "none" ? [] : [SPARE[spec.spare]]),
    look("tyres.age", DUE, "nearside"),
  ],
};

const SPARE = {
  spare: look("tyres.hasSpare", OUT_AND_BACK, "rear", { charge: "missingItem" }),
  sealant: look("tyres.hasSealant", OUT_AND_BACK, "rear", { charge: "missingItem" }),
} as const;

const WHEELS = [
  ["frontNearside", "nearside"],
  ["rearNearside", "nearside"],
  ["frontOffside", "offside"],
  ["rearOffside", "offside"],
] as const;

function wheelChecks([wheel, side]: (typeof WHEELS)[number]): readonly Check[] {
  const part = `tyres.${wheel}`;
  return [
    look(`tyres.sidewall.${wheel}`, OUT_AND_BACK, side, { part, photograph: true, charge: "damage" }),
    read(`tyres.tread.${wheel}`, TURNAROUND, side, TREAD, { part }),
    read(`tyres.pressure.${wheel}`, TURNAROUND, side, PRESSURE, { part }),
  ];
}
