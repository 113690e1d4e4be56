/** What the checks of the systems share: the lines of the terms, and short ways to state a check. */
import type { Check, CheckWhen, View } from "./contract.ts";

/**
 * What a check that comes back short or marked is charged as. The terms may name a thing more nearly, by its
 * part, its check or its kind; these are the last resort.
 */
export const CHARGES = [
  "damage",
  "missingItem",
  "cleaning",
  "fuel",
  "def",
  "lpg",
  "wasteWater",
  "cassette",
  "mileage",
] as const;
export type Charge = (typeof CHARGES)[number];

export interface CheckTraits {
  readonly part?: string;
  readonly photograph?: boolean;
  readonly charge?: Charge;
}

export const OUT_AND_BACK: readonly CheckWhen[] = ["out", "back"];
export const EVERY_TIME: readonly CheckWhen[] = ["out", "back", "turnaround"];
export const TURNAROUND: readonly CheckWhen[] = ["turnaround"];
export const DUE: readonly CheckWhen[] = ["due"];

function check(
  id: string,
  when: readonly CheckWhen[],
  view: View,
  kind: Check["kind"],
  traits: CheckTraits,
): Check {
  return {
    id,
    when,
    view,
    kind,
    photograph: traits.photograph ?? false,
    ...(traits.part === undefined ? {} : { part: traits.part }),
    ...(traits.charge === undefined ? {} : { charge: traits.charge }),
  };
}

/** Looked at, tried or photographed. */
export function look(id: string, when: readonly CheckWhen[], view: View, traits: CheckTraits = {}): Check {
  return check(id, when, view, "look", traits);
}

/** Read off a gauge, a scale or a meter. */
export function read(
  id: string,
  when: readonly CheckWhen[],
  view: View,
  reading: NonNullable<Check["reading"]>,
  traits: CheckTraits = {},
): Check {
  return { ...check(id, when, view, "reading", traits), reading };
}

/** Counted against the number that belongs. */
export function countOf(
  id: string,
  when: readonly CheckWhen[],
  view: View,
  expected: number,
  traits: CheckTraits = {},
): Check {
  return { ...check(id, when, view, "count", traits), expected };
}

/** What hirers use up in the normal way, brought back to a number at each turnaround and never charged. */
export function restock(id: string, view: View, expected: number): Check {
  return { ...check(id, TURNAROUND, view, "count", {}), expected, consumable: true };
}

/** A tank gauge that reads in eighths, as a share full. */
export const EIGHTHS = {
  unit: "share",
  min: 0,
  max: 1,
  tolerance: 0.07,
  step: 0.125,
  source: "practice",
} as const;
