/** Sums over the lives of a trip. */
import * as z from "zod/mini";
import { above0, between } from "./args.ts";
import { entry } from "./entry.ts";

/** A chance from 0 to 1 as it is shown: in steps of 5 %, since the lives tell no more; 0 and 100 only where it is so. */
export function shownChancePct(chance: number): number {
  if (chance <= 0) return 0;
  if (chance >= 1) return 100;
  return Math.min(95, Math.max(5, 5 * Math.round(20 * chance)));
}

/** Mean use over a time. */
export function meanUse(used: number, days: number): number {
  return used / days;
}

/** Road down to the reserve, km, from level, reserve and use per kilometre in the unit of the store; never below 0. */
export function rangeKm(level: number, reserve: number, perKm: number): number {
  return Math.max(0, level - reserve) / perKm;
}

export const TRIP_FORMULAS = [
  entry(
    "trip.range",
    "km",
    "practice",
    "(level − reserve) / use per kilometre",
    {
      level: between(0, 1e6),
      reserve: between(0, 1e6),
      perKm: above0(1e4),
      reserveShare: z.optional(between(0, 1)),
    },
    (a) => rangeKm(a.level, a.reserve, a.perKm),
  ),
  entry(
    "trip.chance",
    "%",
    "practice",
    "share of the lives in which it happens, shown in steps of 5 %",
    { chance: between(0, 1), runs: z.optional(z.int().check(z.minimum(1), z.maximum(5000))) },
    (a) => shownChancePct(a.chance),
  ),
  entry(
    "trip.meanUse",
    "unit of the store per day",
    "practice",
    "mean of the lives over the days of the trip; rateTimes, where returns taught one, is in the use already",
    { used: between(0, 1e9), days: above0(1000), rateTimes: z.optional(above0(100)) },
    (a) => meanUse(a.used, a.days),
  ),
];
