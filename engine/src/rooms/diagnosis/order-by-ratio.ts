import { orderExactly } from "./order-exactly.ts";
import { expectedMinutesOf, notFoundAfter, type OrderProblem } from "./order-problem.ts";

const WINDOW = 10;

/** Next the check that, together with all that must come before it, finds the most per minute. */
export function orderByRatio(problem: OrderProblem): number[] {
  const order: number[] = [];
  while (order.length < problem.checks.length) {
    let best: { readonly chain: readonly number[]; readonly ratio: number } | null = null;
    for (let check = 0; check < problem.checks.length; check++) {
      if (order.includes(check)) continue;
      const chain = chainTo(problem, check, order);
      const gain = notFoundAfter(problem, order) - notFoundAfter(problem, [...order, ...chain]);
      const ratio = gain / chain.reduce((sum, one) => sum + problem.checks[one]!.minutes, 0);
      if (best === null || ratio > best.ratio) best = { chain, ratio };
    }
    order.push(...best!.chain);
  }
  return order;
}

/** What must come before a check and is not done, then the check itself. */
function chainTo(
  problem: OrderProblem,
  check: number,
  done: readonly number[],
  way: readonly number[] = [],
): number[] {
  if (way.includes(check)) throw new RangeError("checks: `after` goes in a circle");
  const chain: number[] = [];
  for (const first of problem.checks[check]!.after)
    if (!done.includes(first) && !chain.includes(first))
      chain.push(...chainTo(problem, first, [...done, ...chain], [...way, check]));
  return [...chain, check];
}

/** Every stretch of ten in its best order, along the whole order, until nothing moves. */
export function improveByWindows(problem: OrderProblem, start: readonly number[]): readonly number[] {
  let order = [...start];
  for (let moved = true; moved; ) {
    moved = false;
    for (let from = 0; from + 1 < order.length; from += WINDOW / 2) {
      const done = order.slice(0, from);
      const inside = order.slice(from, from + WINDOW);
      const tried = [...done, ...orderExactly(problem, done, inside), ...order.slice(from + WINDOW)];
      if (expectedMinutesOf(problem, tried) < expectedMinutesOf(problem, order) - 1e-9) {
        order = tried;
        moved = true;
      }
    }
  }
  return order;
}
