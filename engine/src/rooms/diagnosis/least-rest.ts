import type { OrderProblem } from "./order-problem.ts";

/** Checks that are done one right after the other, as one. */
interface Block {
  minutes: number;
  finds: number;
  /** Σ minutes × what the checks before in the block find */
  within: number;
  before: Block | null;
  /** the block that it was put behind */
  into: Block | null;
}

/**
 * Least minutes that the checks which are not done can take, whatever their order. It is lower for two reasons: what
 * several checks find together is taken as the sum of what each would find next, though they share causes, but never
 * more than all of them find; and of what must come before a check only one thing is kept, so that what is left is a
 * forest, whose best order is found by putting the best check behind what must come before it (W. A. Horn 1972, cited
 * from memory).
 * @param unknown chance that it is none of the causes
 * @param done 1 for each check that is done
 * @param left chance of each cause that is still not found
 */
export function leastRest(
  { checks, missChance }: OrderProblem,
  unknown: number,
  done: Uint8Array,
  left: Float64Array,
): number {
  const blocks: (Block | null)[] = checks.map(({ minutes, causes }, check) => {
    if (done[check] === 1) return null;
    let finds = 0;
    for (const cause of causes) finds += left[cause]! * (1 - missChance);
    return { minutes, finds, within: 0, before: null, into: null };
  });
  checks.forEach(({ after }, check) => {
    const block = blocks[check];
    if (block === null || block === undefined) return;
    for (const first of after) {
      const one = blocks[first]!;
      // of several, the one that finds least per minute holds up the most
      if (one !== null && (block.before === null || isBetter(block.before, one))) block.before = one;
    }
  });
  let still = unknown;
  let least = unknown;
  left.forEach((chance, cause) => {
    still += chance;
    least += chance * missChance ** timesNamed(checks, done, cause);
  });
  return minutesOf(inBestOrder(blocks.filter((block) => block !== null)), still, least);
}

const isBetter = (one: Block, other: Block) => one.finds * other.minutes > other.finds * one.minutes;

/** The blocks of the forest in their best order. */
function inBestOrder(blocks: readonly Block[]): readonly Block[] {
  const open = new Set(blocks);
  const order: Block[] = [];
  const isOrdered = new Set<Block>();
  while (open.size > 0) {
    let best: Block | null = null;
    for (const block of open) if (best === null || isBetter(block, best)) best = block;
    open.delete(best!);
    const first = blockOf(best!.before);
    if (first === null || isOrdered.has(first)) {
      isOrdered.add(best!);
      order.push(best!);
      continue;
    }
    first.within += best!.within + best!.minutes * first.finds;
    first.minutes += best!.minutes;
    first.finds += best!.finds;
    best!.into = first;
  }
  return order;
}

function blockOf(block: Block | null): Block | null {
  let at = block;
  while (at !== null && at.into !== null) at = at.into;
  return at;
}

/** Minutes of blocks in this order; or, where more, those under the line through their ends that never falls below `least`. */
function minutesOf(order: readonly Block[], still: number, least: number): number {
  let exact = 0;
  let under = 0;
  let now = still;
  for (const { minutes, finds, within } of order) {
    exact += minutes * now - within;
    const after = now - finds;
    under +=
      after >= least
        ? (minutes * (now + after)) / 2
        : now <= least
          ? minutes * least
          : minutes * least + (((now - least) * minutes) / finds) * ((now - least) / 2);
    now = after;
  }
  return Math.max(exact, under);
}

function timesNamed(checks: OrderProblem["checks"], done: Uint8Array, cause: number): number {
  let times = 0;
  checks.forEach(({ causes }, check) => {
    if (done[check] === 0 && causes.includes(cause)) times++;
  });
  return times;
}
