/**
 * The order of checks with the least expected time, within the order that must be kept. Each check takes its
 * minutes if it comes to it, and finds each of its causes unless it misses it. What is still not found after
 * a set of checks depends on the set alone, so that the best order is found exactly over the sets
 * (M. Held, R. M. Karp, 1962, for sequencing); with more checks than that allows, by the best ratio of a
 * check together with all that must come before it (J. B. Sidney, 1975; both cited from memory), then by
 * putting each stretch of it in its best order.
 */
export interface CheckToOrder {
  readonly minutes: number;
  /** indices of causes */
  readonly causes: readonly number[];
  /** indices of checks that must come before */
  readonly after: readonly number[];
}
export interface OrderProblem {
  /** chance of each cause; together at most 1 */
  readonly chances: readonly number[];
  readonly checks: readonly CheckToOrder[];
  readonly missChance: number;
}
export interface CheckOrder {
  readonly order: readonly number[];
  readonly expectedMinutes: number;
}

/** 16,384 sets: some hundredths of a second on a slow phone. */
export const EXACT_CHECKS = 14;
const WINDOW = 10;

/** @throws RangeError where `after` goes in a circle */
export function planChecks(problem: OrderProblem, exactUpTo: number = EXACT_CHECKS): CheckOrder {
  const all = problem.checks.map((_, index) => index);
  const order =
    all.length <= exactUpTo ? bestOrder(problem, [], all) : improveByWindows(problem, orderByRatio(problem));
  return { order, expectedMinutes: expectedMinutesOf(problem, order) };
}

/** Expected minutes of an order, whatever it is worth. */
export function expectedMinutesOf(problem: OrderProblem, order: readonly number[]): number {
  return order.reduce(
    (sum, check, place) =>
      sum + problem.checks[check]!.minutes * notFoundAfter(problem, order.slice(0, place)),
    0,
  );
}

/** Chance that the cause is still not found when these checks are done. */
export function notFoundAfter(
  { chances, checks, missChance }: OrderProblem,
  done: readonly number[],
): number {
  const left = [...chances];
  for (const check of done)
    for (const cause of checks[check]!.causes) left[cause] = left[cause]! * missChance;
  const unknown = Math.max(0, 1 - chances.reduce((sum, chance) => sum + chance, 0));
  return left.reduce((sum, chance) => sum + chance, unknown);
}

/** The best order of `some` checks when `done` are done, exactly, over all sets of them. */
function bestOrder(problem: OrderProblem, done: readonly number[], some: readonly number[]): number[] {
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

/** Next the check that, together with all that must come before it, finds the most per minute. */
function orderByRatio(problem: OrderProblem): number[] {
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
function improveByWindows(problem: OrderProblem, start: readonly number[]): readonly number[] {
  let order = [...start];
  for (let moved = true; moved; ) {
    moved = false;
    for (let from = 0; from + 1 < order.length; from += WINDOW / 2) {
      const done = order.slice(0, from);
      const inside = order.slice(from, from + WINDOW);
      const tried = [...done, ...bestOrder(problem, done, inside), ...order.slice(from + WINDOW)];
      if (expectedMinutesOf(problem, tried) < expectedMinutesOf(problem, order) - 1e-9) {
        order = tried;
        moved = true;
      }
    }
  }
  return order;
}
