/** Loads against limits, with what is not known of them. */
import * as z from "zod/mini";
import { above0, between } from "./args.ts";
import { entry } from "./entry.ts";

/** Upper tail of the standard normal, share from 0 to 1; absolute error below 1e-6. */
export function normalTail(zScore: number): number {
  const x = Math.abs(zScore) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const poly =
    t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const tail = 0.5 * poly * Math.exp(-x * x);
  return zScore >= 0 ? tail : 1 - tail;
}

/** Chance that a load with this standard deviation is above its limit, by the normal distribution; 0 or 1 without spread. */
export function chanceOver(loadKg: number, sdKg: number, limitKg: number): number {
  if (sdKg === 0) return loadKg > limitKg ? 1 : 0;
  return normalTail((limitKg - loadKg) / sdKg);
}

/** Standard deviation of a mass known only to lie within ± a share of the stated one, kg. */
export function toleranceSdKg(massKg: number, share: number): number {
  return (massKg * share) / Math.sqrt(3);
}

const kg = between(0, 10_000);

export const LOADING_FORMULAS = [
  entry(
    "mass.total",
    "kg",
    "mass-balance",
    "sum",
    { massesKg: z.array(between(-1000, 10_000)).check(z.maxLength(1000)) },
    (a) => a.massesKg.reduce((sum, mass) => sum + mass, 0),
  ),
  entry(
    "mass.payload",
    "kg",
    "mass-balance",
    "payload",
    { mamKg: kg, miroKg: kg, optionsKg: kg },
    (a) => a.mamKg - a.miroKg - a.optionsKg,
  ),
  entry(
    "mass.margin",
    "kg",
    "mass-balance",
    "limit less load",
    { limitKg: kg, loadKg: kg },
    (a) => a.limitKg - a.loadKg,
  ),
  entry(
    "mass.toleranceSd",
    "kg",
    "gum-2008",
    "4.3.7",
    { massKg: above0(10_000), share: between(0, 1) },
    (a) => toleranceSdKg(a.massKg, a.share),
  ),
  entry(
    "mass.chanceOver",
    "chance",
    "normal-tail",
    "7.1.26",
    { loadKg: kg, sdKg: between(0, 1000), limitKg: kg },
    (a) => chanceOver(a.loadKg, a.sdKg, a.limitKg),
  ),
];
