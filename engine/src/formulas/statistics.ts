/** Statistics: updating a rate, quantiles, causes of a fault. */
import * as z from "zod/mini";
import { BadInput } from "../base/bad-input.ts";
import { above0, between } from "./args.ts";
import { entry } from "./entry.ts";

/** Normal prior with normal data of known spread: mean and standard deviation afterwards. */
export function normalUpdate(
  priorMean: number,
  priorSd: number,
  dataSd: number,
  count: number,
  dataMean: number,
): { readonly mean: number; readonly sd: number } {
  const [prior, data] = [1 / priorSd ** 2, count / dataSd ** 2];
  return { mean: (prior * priorMean + data * dataMean) / (prior + data), sd: Math.sqrt(1 / (prior + data)) };
}

/** Quantile of values already sorted upwards, type 7 of Hyndman and Fan; p from 0 to 1. */
export function sortedQuantile(sorted: ArrayLike<number>, p: number): number {
  const at = (sorted.length - 1) * p;
  const low = Math.floor(at);
  const here = sorted[low]!;
  return low + 1 < sorted.length ? here + (at - low) * (sorted[low + 1]! - here) : here;
}

/** Quantile of values in any order, type 7; leaves them as they are. */
export function quantile(values: readonly number[], p: number): number {
  return sortedQuantile(
    values.toSorted((a, b) => a - b),
    p,
  );
}

/** Chance of a sign, and of each cause once it is seen. */
export function bayes(priors: readonly number[], likelihoods: readonly number[]) {
  const joint = priors.map((prior, at) => prior * likelihoods[at]!);
  const evidence = joint.reduce((sum, part) => sum + part, 0);
  return { evidence, posteriors: joint.map((part) => part / evidence) };
}

/** Order of actions, single fault, by probability over cost (first at 1), and the expected cost of going through them. */
export function actionOrder(probabilities: readonly number[], costs: readonly number[]) {
  const order = probabilities
    .map((p, at) => ({ at, worth: p / costs[at]! }))
    .sort((a, b) => b.worth - a.worth || a.at - b.at)
    .map(({ at }) => at);
  let left = 1;
  let expectedCost = 0;
  for (const at of order) {
    expectedCost += left * costs[at]!;
    left -= probabilities[at]!;
  }
  return { order: order.map((at) => at + 1), expectedCost };
}

function sameLength(a: readonly number[], b: readonly number[], field: string): void {
  if (a.length !== b.length)
    throw new BadInput([{ path: field, expected: `expected ${a.length} values, got ${b.length}` }]);
}

const number = between(-1e15, 1e15);
const chances = z.array(between(0, 1)).check(z.minLength(1), z.maxLength(1000));

export const STATISTICS_FORMULAS = [
  entry(
    "statistics.normalUpdate",
    "same as priorMean",
    "bayes-rules",
    "5.3.3",
    {
      priorMean: number,
      priorSd: above0(1e9),
      dataSd: above0(1e9),
      count: z.int().check(z.minimum(0), z.maximum(1e9)),
      dataMean: number,
    },
    (a) => ({ ...normalUpdate(a.priorMean, a.priorSd, a.dataSd, a.count, a.dataMean) }),
  ),
  entry(
    "statistics.quantile",
    "same as values",
    "hyndman-fan-1996",
    "type 7",
    { values: z.array(number).check(z.minLength(1), z.maxLength(1_000_000)), p: between(0, 1) },
    (a) => quantile(a.values, a.p),
  ),
  entry("statistics.bayes", "–", "bayes-theorem", "", { priors: chances, likelihoods: chances }, (a) => {
    sameLength(a.priors, a.likelihoods, "likelihoods");
    const answer = bayes(a.priors, a.likelihoods);
    if (answer.evidence > 0) return answer;
    throw new BadInput([
      { path: "likelihoods", expected: "expected at least one cause that can give the sign" },
    ]);
  }),
  entry(
    "statistics.actionOrder",
    "same as costs",
    "decision-troubleshooting",
    "largest p/c first",
    { probabilities: chances, costs: z.array(above0(1e9)) },
    (a) => {
      sameLength(a.probabilities, a.costs, "costs");
      return actionOrder(a.probabilities, a.costs);
    },
  ),
];
