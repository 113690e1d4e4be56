import type { SystemKind } from "../../systems/registry.ts";

/**
 * The one fixed order in which systems settle within a step. First what fills the supplies of the step
 * (running engine, post), then what charges (the starter battery first), then the consumers by who comes first when there is too little:
 * the charger before the rest, so that a weak post still keeps 12 V alive; cold food before warmth; the minutes of
 * cooking before warmth, since who cooks turns the heater down for it; warmth before hot water, but where both come out
 * of one set of elements hot water has its part first. Read from the end it is the order of shedding at a weak post.
 * An inverter comes before all that may run on it; what it gives and nobody takes goes back. The traction battery
 * comes after them, so that charging it at a post never puts out the heater.
 * A kind that is not listed settles last, in the order of the vehicle's description.
 */
export const SETTLEMENT_ORDER: readonly SystemKind[] = [
  "fuel",
  "def",
  "hookUp",
  "cab",
  "solar",
  "charging",
  "leisureBattery",
  "lights",
  "freshWater",
  "cassetteToilet",
  "fridge",
  "inverter",
  "cooking",
  "heating",
  "hotWater",
  "tractionBattery",
  "lpg",
  "wasteWater",
];

/** Place of a kind in the settlement; unlisted kinds come last. */
export function settlementRank(kind: SystemKind): number {
  const rank = SETTLEMENT_ORDER.indexOf(kind);
  return rank < 0 ? SETTLEMENT_ORDER.length : rank;
}

/**
 * What charges the battery settles once before the consumers, so that an empty battery serves them within
 * the same step, and once more after them, with what it has left: it then carries what they drew.
 */
export const SETTLES_AGAIN: ReadonlySet<string> = new Set<SystemKind>(["solar", "charging"]);
