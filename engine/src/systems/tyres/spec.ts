import type * as z from "zod/mini";
import type { DrawnPart, SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { acrossM } from "../draw.ts";
import { behindFrontAxle, count, quantity, type Side } from "../fields.ts";

const { fields, schema } = defineFields({
  loadIndexFront: count(70, 130, "practice"),
  loadIndexRear: count(70, 130, "practice"),
  /** cold, laden */
  pressureFrontBar: quantity("bar", 1.5, 7, "practice"),
  pressureRearBar: quantity("bar", 1.5, 7, "practice"),
  /** Monday of the week of make that the DOT code gives */
  dotWeek: { type: "date", source: "practice" },
  season: {
    type: "choice",
    options: ["summer", "allSeason", "winter"],
    default: "allSeason",
    source: "practice",
  },
  spare: { type: "choice", options: ["spare", "sealant", "none"], default: "sealant", source: "practice" },
  /** wheelbase, to place the rear wheels on the drawing */
  rearBehindFrontAxleM: { ...behindFrontAxle(3.8), follows: "wheelbaseM" },
});

/** The tyres on the vehicle, with the pressures for it laden. */
export type TyresSpec = z.infer<typeof schema>;

export const spec: SystemSpec<TyresSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    wheel("tyres.frontNearside", "nearside", 0),
    wheel("tyres.rearNearside", "nearside", fitted.rearBehindFrontAxleM),
    wheel("tyres.frontOffside", "offside", 0),
    wheel("tyres.rearOffside", "offside", fitted.rearBehindFrontAxleM),
  ],
};

/** Outer diameter of a light commercial tyre, m: only for the drawing. */
const WHEEL_M = 0.68;

function wheel(part: string, side: Side, xM: number): DrawnPart {
  const size = { lengthM: WHEEL_M, heightM: WHEEL_M, zM: WHEEL_M / 2 };
  return { part, name: `part.${part}`, view: side, shape: "circle", xM, yM: acrossM(side), ...size };
}
