/** Measured use against forecast use: rates of vehicles, and how good forecasts were. */
import * as z from "zod/mini";
import { above0, between } from "./args.ts";
import { entry } from "./entry.ts";

/** A rate from the mean of its logarithm, held between its bounds. */
export function rateOf(meanLog: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, Math.exp(meanLog)));
}

/**
 * How much further returns lie apart than their forecasts have it, as a standard deviation of the logarithm: the mean
 * of what squares are in excess, with some returns that show no excess put before them.
 */
export function excessSpread(excessSum: number, count: number, priorCount: number, most: number): number {
  return Math.min(most, Math.sqrt(Math.max(0, excessSum / (count + priorCount))));
}

/** How much closer together returns lie than their forecasts have it: root of the mean squares over theirs, 1 at most. */
export function narrowing(
  excessSum: number,
  ownSum: number,
  count: number,
  priorCount: number,
  least: number,
) {
  const own = ownSum * (1 + priorCount / Math.max(1, count));
  return own > 0 ? Math.min(1, Math.sqrt(Math.max(least ** 2, 1 + excessSum / own))) : 1;
}

/** Share of outcomes that lay within the band. */
export function coverage(inside: number, count: number): number {
  return inside / count;
}

/** How far all that was measured lies above (below: negative) all that was forecast, as a share of the forecast. */
export function bias(measured: number, forecast: number): number {
  return measured / forecast - 1;
}

const count = z.int().check(z.minimum(0), z.maximum(1e6));

export const CALIBRATION_FORMULAS = [
  entry(
    "calibration.rate",
    "–",
    "bayes-rules",
    "5.3.3 on the logarithm: e to the mean, between least and most",
    {
      meanLog: between(-20, 20),
      least: above0(1),
      most: between(1, 100),
      priorMean: z.optional(between(-20, 20)),
      priorSd: z.optional(above0(100)),
      dataMean: z.optional(between(-20, 20)),
      dataSd: z.optional(above0(1e6)),
      count: z.optional(count),
      warmth: z.optional(between(-20, 20)),
    },
    (a) => rateOf(a.meanLog, a.least, a.most),
  ),
  entry(
    "calibration.spread",
    "–",
    "practice",
    "root of the mean excess of squared logarithms, with priorCount returns of no excess put before them",
    {
      excessSum: between(-1e9, 1e9),
      count,
      priorCount: z.int().check(z.minimum(1), z.maximum(1000)),
      most: above0(10),
    },
    (a) => excessSpread(a.excessSum, a.count, a.priorCount, a.most),
  ),
  entry(
    "calibration.width",
    "–",
    "practice",
    "root of the squared logarithms over those of the forecasts, with priorCount returns of just those put before them",
    {
      excessSum: between(-1e9, 1e9),
      ownSum: between(0, 1e9),
      count,
      priorCount: z.int().check(z.minimum(1), z.maximum(1000)),
      least: between(0, 1),
    },
    (a) => narrowing(a.excessSum, a.ownSum, a.count, a.priorCount, a.least),
  ),
  entry(
    "calibration.coverage",
    "share",
    "practice",
    "outcomes from P10 to P90 over all outcomes; 0.8 is meant",
    { inside: count, count: z.int().check(z.minimum(1), z.maximum(1e6)) },
    (a) => coverage(a.inside, a.count),
  ),
  entry(
    "calibration.bias",
    "share",
    "practice",
    "sum of what was measured over sum of what was forecast, less 1",
    { measured: between(0, 1e12), forecast: above0(1e12), count: z.optional(count) },
    (a) => bias(a.measured, a.forecast),
  ),
];
