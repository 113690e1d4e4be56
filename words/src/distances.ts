import type { Written } from "./figure-text.ts";

/** In what a depot reads and writes distances; everything is kept and computed in km. */
export type DistanceUnit = "km" | "mi";

/** km in a statute mile: exact, by the international yard and pound agreement of 1959. */
const KM_PER_MILE = 1.609344;

/** A distance, or a price for each km, in the depot's unit; other figures stay as they are. */
export function inDistances<F extends Written>(figure: F, unit: DistanceUnit): F {
  if (unit === "km") return figure;
  if (figure.unit === "km") return { ...figure, value: figure.value / KM_PER_MILE, unit: "mi" };
  if (figure.unit === "pence/km") return { ...figure, value: figure.value * KM_PER_MILE, unit: "pence/mi" };
  return figure;
}

/** How many times larger a number is as it is typed than as it is kept: for fields in km and in pence for each km. */
export function timesTyped(unit: string, distances: DistanceUnit): number {
  if (distances === "km") return 1;
  return unit === "km" ? 1 / KM_PER_MILE : unit === "pence/km" ? KM_PER_MILE : 1;
}

/** What was typed, as it is kept: to a metre, so that a mile comes back as the mile that was typed. */
export const keptOf = (typed: number, times: number): number =>
  times === 1 ? typed : Math.round((typed / times) * 1e6) / 1e6;
