import type { OrderProblem } from "./order-problem.ts";

/** The best order of `some` checks when `done` are done, exactly, over all sets of them. */
export function orderExactly(
  problem: OrderProblem,
  done: readonly number[],
  some: readonly number[],
): number[] {
  const size = 1 << some.length;
  const place = new Map(some.map((check, bit) => [check, bit]));
  const before = some.map((check) =>
    problem.checks[check]!.after.reduce(
      (mask, first) => (place.has(first) ? mask | (1 << place.get(first)!) : mask),
      0,
    ),
  );
  const reach = notFoundOfSets(problem, done, some);
  const cost = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
  const choice = new Int8Array(size).fill(-1);
  cost[size - 1] = 0;
  for (let set = size - 2; set >= 0; set--) {
    for (let bit = 0; bit < some.length; bit++) {
      if ((set >> bit) & 1 || (before[bit]! & ~set) !== 0) continue;
      const total = problem.checks[some[bit]!]!.minutes * reach[set]! + cost[set | (1 << bit)]!;
      // a hair more counts as the same, so that equal orders stay in the order in which they were told
      if (total < cost[set]! - 1e-12) {
        cost[set] = total;
        choice[set] = bit;
      }
    }
  }
  const order: number[] = [];
  for (let set = 0; set !== size - 1; ) {
    const bit = choice[set]!;
    if (bit < 0) throw new RangeError("checks: `after` goes in a circle");
    order.push(some[bit]!);
    set |= 1 << bit;
  }
  return order;
}

/** Chance of not yet found for every set of `some`, on top of what is done. */
function notFoundOfSets(
  { chances, checks, missChance }: OrderProblem,
  done: readonly number[],
  some: readonly number[],
): Float64Array {
  const size = 1 << some.length;
  const unknown = Math.max(0, 1 - chances.reduce((sum, chance) => sum + chance, 0));
  const reach = new Float64Array(size).fill(unknown);
  chances.forEach((chance, cause) => {
    const names = (check: number) => checks[check]!.causes.includes(cause);
    const start = chance * missChance ** done.filter(names).length;
    const left = new Float64Array(size);
    left[0] = start;
    reach[0] = reach[0]! + start;
    for (let set = 1; set < size; set++) {
      const low = 31 - Math.clz32(set & -set);
      left[set] = left[set & (set - 1)]! * (names(some[low]!) ? missChance : 1);
      reach[set] = reach[set]! + left[set]!;
    }
  });
  return reach;
}
