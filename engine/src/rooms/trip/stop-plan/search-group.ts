/** A set of decisions as bits: bit k stands for the k-th of the group. */
export interface Tried {
  readonly mask: number;
  /** effort of the decisions + cost × chance of trouble, pence */
  readonly total: number;
}

export interface GroupResult {
  readonly best: Tried;
  /** nothing left out can be better by more than the stated share */
  readonly proven: boolean;
}

/** More than this many decisions are too many sets to list. */
const MOST_LISTED = 12;

/**
 * Finds the set of decisions with the least total, asking for the trouble of one set at a time (yielded; the
 * answer comes back through `next`). Best first by a lower bound: effort of the set + the largest trouble known of
 * any set that holds it, since doing more never brings trouble nearer. It ends when no bound is below the best by
 * more than `within`. Groups too large to list are improved step by step from three starts instead, mostly not proven.
 */
export function* searchGroup(
  efforts: readonly number[],
  asked: number,
  within: number,
): Generator<number, GroupResult, number> {
  const count = efforts.length;
  const effortOf = (mask: number) => {
    let sum = 0;
    for (let k = 0; k < count; k++) if (Math.floor(mask / 2 ** k) % 2 === 1) sum += efforts[k]!;
    return sum;
  };
  return count <= MOST_LISTED
    ? yield* bestFirst(count, effortOf, within)
    : yield* stepByStep(count, effortOf, asked);
}

function* bestFirst(
  count: number,
  effortOf: (mask: number) => number,
  within: number,
): Generator<number, GroupResult, number> {
  const sets = 1 << count;
  const all = sets - 1;
  const bound = new Float64Array(sets);
  const isTried = new Uint8Array(sets);
  const least = yield all;
  isTried[all] = 1;
  let best: Tried = { mask: all, total: least + effortOf(all) };
  for (let mask = 0; mask < sets; mask++) bound[mask] = effortOf(mask) + least;
  for (;;) {
    let next = -1;
    for (let mask = 0; mask < sets; mask++)
      if (isTried[mask] === 0 && (next < 0 || bound[mask]! < bound[next]!)) next = mask;
    if (next < 0 || bound[next]! >= best.total * (1 - within)) return { best, proven: true };
    const trouble = yield next;
    isTried[next] = 1;
    const total = trouble + effortOf(next);
    if (total < best.total) best = { mask: next, total };
    // every subset of it is in at least that much trouble
    for (let sub = next; ; sub = (sub - 1) & next) {
      bound[sub] = Math.max(bound[sub]!, effortOf(sub) + trouble);
      if (sub === 0) break;
    }
  }
}

/**
 * From each start, change by change, each kept where it costs less, until none does. The last stops come first: a
 * trip that differs only there is taken up where it begins to differ. What costs more effort than all the trouble
 * that is left is not tried.
 */
function* stepByStep(
  count: number,
  effortOf: (mask: number) => number,
  asked: number,
): Generator<number, GroupResult, number> {
  const known = new Map<number, number>();
  const totalOf = function* (mask: number): Generator<number, number, number> {
    if (!known.has(mask)) known.set(mask, (yield mask) + effortOf(mask));
    return known.get(mask)!;
  };
  let best: Tried = { mask: 0, total: yield* totalOf(0) };
  // nothing can cost less than doing nothing where any one thing costs more effort than all the trouble there is
  const efforts = Array.from({ length: count }, (_, k) => effortOf(2 ** k));
  if (best.total <= Math.min(...efforts)) return { best, proven: true };
  for (const start of new Set([asked, 0, 2 ** count - 1])) {
    let here: Tried = { mask: start, total: yield* totalOf(start) };
    for (let sinceMoved = 0, k = count - 1; sinceMoved < count; sinceMoved++, k = (k + count - 1) % count) {
      const isIn = Math.floor(here.mask / 2 ** k) % 2 === 1;
      if (!isIn && efforts[k]! >= here.total - effortOf(here.mask)) continue;
      const mask = isIn ? here.mask - 2 ** k : here.mask + 2 ** k;
      const total = yield* totalOf(mask);
      if (total >= here.total) continue;
      here = { mask, total };
      sinceMoved = -1;
    }
    if (here.total < best.total) best = here;
  }
  return { best, proven: false };
}
