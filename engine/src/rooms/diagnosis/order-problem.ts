/** What is to be put in order, and what an order costs. */
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
