/** The 230 V supply. */
import * as z from "zod/mini";
import { above0, between } from "./args.ts";
import { entry } from "./entry.ts";

/** Current of a resistive load, A. */
export function mainsCurrentA(powerW: number, volts: number): number {
  return powerW / volts;
}

/** Area of a hook-up lead by the rating of its connectors, mm² (table 721). */
const LEAD_AREA_MM2: Readonly<Record<number, number>> = { 16: 2.5, 32: 6, 63: 16 };

/** Whether the breaker of a post holds a current: `fits` within its rating, `mayTrip` where it may, `trips` where it does. */
export type BreakerVerdict = "fits" | "mayTrip" | "trips";

/** Multiples of the rating (EN 60898-1, from memory): trips within the hour; within a minute, up to 32 A. */
const TRIPS_WITHIN_HOUR = 1.45;
const TRIPS_WITHIN_MINUTE = 2.55;
const HOUR_MIN = 60;
const MINUTE_MIN = 1;

/**
 * What the breaker of a post does at a steady current, A, by its rating, 1 to 32 A. Up to its rating it holds; above
 * that an electronic one may cut at once and a thermal one may trip (by the standard it holds 1.13 times for an hour),
 * and from 1.45 times on it trips. `latestMin` is the latest by the standard, in between on a straight line of the
 * logarithms (ours); null where it need not trip at all.
 */
export function breakerVerdict(
  currentA: number,
  ratedA: number,
): { readonly verdict: BreakerVerdict; readonly latestMin: number | null } {
  const times = currentA / ratedA;
  // a thousandth is rounding of the power on a label
  if (times <= 1.001) return { verdict: "fits", latestMin: null };
  if (times < TRIPS_WITHIN_HOUR) return { verdict: "mayTrip", latestMin: null };
  const along = Math.log(times / TRIPS_WITHIN_HOUR) / Math.log(TRIPS_WITHIN_MINUTE / TRIPS_WITHIN_HOUR);
  return { verdict: "trips", latestMin: HOUR_MIN * (MINUTE_MIN / HOUR_MIN) ** Math.min(1, along) };
}

export const MAINS_FORMULAS = [
  entry(
    "mains.current",
    "A",
    "electric-power",
    "I = P/U",
    { powerW: between(0, 1_000_000), volts: above0(1000) },
    (a) => mainsCurrentA(a.powerW, a.volts),
  ),
  entry(
    "mains.power",
    "W",
    "electric-power",
    "P = U I",
    { currentA: between(0, 10_000), volts: above0(1000) },
    (a) => a.currentA * a.volts,
  ),
  entry(
    "mains.breaker",
    "–",
    "en-60898",
    "time-current zone, types B to D, up to 32 A",
    { currentA: between(0, 1000), ratedA: between(1, 32) },
    (a) => breakerVerdict(a.currentA, a.ratedA),
  ),
  entry(
    "mains.leadArea",
    "mm²",
    "bs-7671-721",
    "table 721",
    { ratingA: z.literal([16, 32, 63]) },
    (a) => LEAD_AREA_MM2[a.ratingA]!,
  ),
];
