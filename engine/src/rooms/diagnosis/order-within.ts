import { leastRest } from "./least-rest.ts";
import { expectedMinutesOf, type OrderProblem } from "./order-problem.ts";

/** how many sets are looked into at most: some tenths of a second on a slow phone */
const MOST_SETS = 4000;
/** sets are numbers with a bit for each check, exact up to so many */
const MOST_CHECKS = 52;

/** A set of checks that are done, and the cheapest way to it that is known. */
interface Reached {
  readonly set: number;
  readonly minutes: number;
  /** minutes + what the rest costs at the least */
  readonly bound: number;
  readonly done: Uint8Array;
  /** chance of each cause that is still not found */
  readonly left: Float64Array;
  readonly check: number;
  readonly before: Reached | null;
  readonly steps: number;
}

export interface OrderWithin {
  readonly order: readonly number[];
  /** no order that may be kept costs less, min */
  readonly lowerBound: number;
}

/**
 * A known order, or a cheaper one, with what no order can cost less than: the search goes best first over the sets of
 * checks (Hart, Nilsson and Raphael 1968, cited from memory), until the known order is shown to cost at most `share`
 * more than the best, or the best is found, or too many sets have been looked into.
 */
export function orderWithin(problem: OrderProblem, known: readonly number[], share: number): OrderWithin {
  const unknown = Math.max(0, 1 - sum(problem.chances));
  const start = reach(problem, unknown, null, -1);
  const enough = expectedMinutesOf(problem, known) / (1 + share);
  const open = [start];
  const cheapest = new Map<number, number>([[start.set, 0]]);
  const most = problem.checks.length > MOST_CHECKS ? 0 : MOST_SETS;
  for (let looked = 0; looked < most && open[0]!.bound < enough; looked++) {
    const next = takeFirst(open)!;
    if (next.minutes > cheapest.get(next.set)!) continue;
    if (next.steps === problem.checks.length) return { order: orderOf(next), lowerBound: next.minutes };
    problem.checks.forEach(({ after }, check) => {
      if (next.done[check] === 1 || after.some((first) => next.done[first] === 0)) return;
      const one = reach(problem, unknown, next, check);
      if (one.minutes >= (cheapest.get(one.set) ?? Number.POSITIVE_INFINITY)) return;
      cheapest.set(one.set, one.minutes);
      put(open, one);
    });
  }
  return { order: known, lowerBound: open[0]!.bound };
}

function reach(problem: OrderProblem, unknown: number, before: Reached | null, check: number): Reached {
  const { chances, checks, missChance } = problem;
  const done = before === null ? new Uint8Array(checks.length) : before.done.slice();
  const left = before === null ? Float64Array.from(chances) : before.left.slice();
  let minutes = 0;
  if (before !== null) {
    const { minutes: takes, causes } = checks[check]!;
    minutes = before.minutes + takes * (unknown + sum(before.left));
    done[check] = 1;
    for (const cause of causes) left[cause] = left[cause]! * missChance;
  }
  const rest = leastRest(problem, unknown, done, left);
  return {
    set: before === null ? 0 : before.set + 2 ** check,
    minutes,
    bound: minutes + rest,
    done,
    left,
    check,
    before,
    steps: before === null ? 0 : before.steps + 1,
  };
}

function orderOf(last: Reached): number[] {
  const order: number[] = [];
  for (let at = last; at.before !== null; at = at.before) order.push(at.check);
  return order.reverse();
}

function sum(values: Iterable<number>): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}

/** A heap: the least bound first. */
function put(open: Reached[], one: Reached): void {
  let at = open.push(one) - 1;
  while (at > 0) {
    const above = (at - 1) >> 1;
    if (open[above]!.bound <= one.bound) break;
    open[at] = open[above]!;
    at = above;
  }
  open[at] = one;
}

function takeFirst(open: Reached[]): Reached | undefined {
  const first = open[0];
  const last = open.pop();
  if (first === undefined || last === undefined || open.length === 0) return first;
  let at = 0;
  for (;;) {
    let below = 2 * at + 1;
    if (below >= open.length) break;
    if (below + 1 < open.length && open[below + 1]!.bound < open[below]!.bound) below++;
    if (open[below]!.bound >= last.bound) break;
    open[at] = open[below]!;
    at = below;
  }
  open[at] = last;
  return first;
}
