/**
 * Spread of the daily clearness index about its monthly mean: quantiles by the month's mean (computed from
 * daily series of European lowland stations), joined by straight lines and scaled so that the mean is kept.
 */
const PROBABILITY = [0, 0.05, 0.25, 0.5, 0.75, 0.95, 1] as const;
/** 5, 25, 50, 75 and 95 % quantiles at monthly means of .25, .35, .45, .55, .65 */
const QUANTILES = [
  [0.09, 0.15, 0.22, 0.38, 0.6],
  [0.11, 0.19, 0.33, 0.5, 0.64],
  [0.15, 0.31, 0.47, 0.6, 0.69],
  [0.21, 0.45, 0.59, 0.66, 0.72],
  [0.33, 0.57, 0.66, 0.7, 0.74],
] as const;
const CLEAREST = 0.82;

/** Seven knots of the daily distribution for a month's mean clearness, in the order of PROBABILITY. */
export function clearnessKnots(mean: number): Float64Array {
  const place = Math.max(0, Math.min(QUANTILES.length - 1, (mean - 0.25) / 0.1));
  const low = Math.min(QUANTILES.length - 2, Math.floor(place));
  const share = place - low;
  const inner = QUANTILES[low]!.map((q, k) => q + share * (QUANTILES[low + 1]![k]! - q));
  const knots = Float64Array.of(inner[0]! / 2, ...inner, Math.min(CLEAREST, inner[4]! + 0.05));
  // scaling may push the clearest days over the limit; the rest then makes up for it
  for (let round = 0; round < 20; round++) {
    const factor = mean / knotsMean(knots);
    if (factor === 1) break;
    for (let k = 0; k < knots.length; k++) knots[k] = Math.min(CLEAREST, knots[k]! * factor);
  }
  return knots;
}

/** Mean of the distribution through the knots. */
export function knotsMean(knots: Float64Array): number {
  let sum = 0;
  for (let k = 1; k < knots.length; k++)
    sum += ((knots[k]! + knots[k - 1]!) / 2) * (PROBABILITY[k]! - PROBABILITY[k - 1]!);
  return sum;
}

/** Clearness at a probability from 0 to 1. */
export function clearnessAt(knots: Float64Array, probability: number): number {
  let k = 1;
  while (k < 6 && probability > PROBABILITY[k]!) k++;
  const p0 = PROBABILITY[k - 1]!;
  return knots[k - 1]! + ((knots[k]! - knots[k - 1]!) * (probability - p0)) / (PROBABILITY[k]! - p0);
}
