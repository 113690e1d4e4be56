import { improveByWindows, orderByRatio } from "./order-by-ratio.ts";
import { orderExactly } from "./order-exactly.ts";
import { expectedMinutesOf, type OrderProblem } from "./order-problem.ts";
import { orderWithin } from "./order-within.ts";

/**
 * The order of checks with the least expected time, within the order that must be kept. Each check takes its
 * minutes if it comes to it, and finds each of its causes unless it misses it. What is still not found after
 * a set of checks depends on the set alone, so that the best order is found exactly over the sets
 * (M. Held, R. M. Karp, 1962, for sequencing). With more checks than that allows: by the best ratio of a check
 * together with all that must come before it (J. B. Sidney, 1975; both cited from memory), then each stretch of it
 * in its best order; and a search that shows that order to be at most 5 % dearer than the best, or finds a better one.
 */
export interface CheckOrder {
  readonly order: readonly number[];
  readonly expectedMinutes: number;
  /** no order that may be kept takes less; the same as `expectedMinutes` where the order is the best, but for rounding */
  readonly lowerBound: number;
}

/** 16,384 sets: some hundredths of a second on a slow phone. */
const EXACT_CHECKS = 14;
/** What the order of more checks may cost more than the best. */
const WITHIN = 0.05;

/** @throws RangeError where `after` goes in a circle */
export function planChecks(problem: OrderProblem, exactUpTo: number = EXACT_CHECKS): CheckOrder {
  const all = problem.checks.map((_, index) => index);
  if (all.length <= exactUpTo) {
    const order = orderExactly(problem, [], all);
    const expectedMinutes = expectedMinutesOf(problem, order);
    return { order, expectedMinutes, lowerBound: expectedMinutes };
  }
  const known = improveByWindows(problem, orderByRatio(problem));
  const { order, lowerBound } = orderWithin(problem, known, WITHIN);
  return { order, expectedMinutes: expectedMinutesOf(problem, order), lowerBound };
}
