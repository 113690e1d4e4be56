import { isFree, type Seating, seat, unseat } from "./seating.ts";
import { sellableOf } from "./sellable.ts";

/** What a way of seating is judged by, first things first. */
export interface SeatScore {
  readonly value: number;
  /** vehicles used, or moves */
  readonly cost: number;
  readonly gaps: number;
}

/** More value, then less cost, then more gaps; above 0 where `a` is better. Values within a rounding error are alike. */
export function compareScores(a: SeatScore, b: SeatScore): number {
  const value = a.value - b.value;
  if (Math.abs(value) > 1e-9 * Math.max(1, Math.abs(a.value))) return value;
  return b.cost - a.cost || a.gaps - b.gaps;
}

export interface ReseatTask {
  readonly seating: Seating;
  /** hires without a seat, by start */
  readonly hires: readonly number[];
  /** 1 for the vehicles that may be used */
  readonly open: Uint8Array;
  /** what seating a hire there adds to the cost, as things stand */
  readonly costOf: (hire: number, vehicle: number) => number;
  /** vehicles whose gaps can change */
  readonly gapsOf: readonly number[];
  /** null where gaps do not count */
  readonly horizon: readonly [number, number] | null;
  readonly limit: number;
  readonly draw: () => number;
  readonly isOver?: () => boolean;
}

/**
 * Tries every way to seat some hires, all others staying, and leaves the best in place. `complete` is false where the
 * limit of tries ended it first; then it is the best that was met.
 * @param least - a way must be at least as good; where none is, the hires stay without a seat and `score` is null
 */
export function reseatBest(task: ReseatTask, least: SeatScore | null) {
  const { seating, hires } = task;
  const rest = new Float64Array(hires.length + 1);
  for (let k = hires.length - 1; k >= 0; k--) rest[k] = rest[k + 1]! + seating.model.value[hires[k]!]!;
  const walk: Walk = { task, rest, best: least, on: null, tries: 0 };
  tryFrom(walk, 0, 0, 0);
  walk.on?.forEach((vehicle, k) => {
    if (vehicle >= 0) seat(seating, hires[k]!, vehicle);
  });
  return { score: walk.on === null ? null : walk.best, complete: walk.tries <= task.limit };
}

interface Walk {
  readonly task: ReseatTask;
  /** value from each hire on */
  readonly rest: Float64Array;
  best: SeatScore | null;
  on: number[] | null;
  tries: number;
}

/** The score of the hires of a task as they sit now; `cost` is left to the caller. */
export function scoreOf({ seating, hires, gapsOf, horizon }: ReseatTask, cost: number): SeatScore {
  const value = hires.reduce(
    (sum, hire) => sum + (seating.on[hire]! < 0 ? 0 : seating.model.value[hire]!),
    0,
  );
  const gaps =
    horizon === null ? 0 : gapsOf.reduce((sum, vehicle) => sum + sellableOf(seating, vehicle, horizon), 0);
  return { value, cost, gaps };
}

function tryFrom(walk: Walk, k: number, value: number, cost: number): void {
  const { seating, hires, open, costOf, limit, draw } = walk.task;
  if (++walk.tries % 64 === 0 && walk.task.isOver?.() === true) walk.tries = limit + 1;
  if (walk.tries > limit) return;
  const hopes = { value: value + walk.rest[k]!, cost, gaps: Number.POSITIVE_INFINITY };
  if (walk.best !== null && compareScores(hopes, walk.best) < 0) return;
  const hire = hires[k];
  if (hire === undefined) {
    keep(walk, cost);
    return;
  }
  const allowed = seating.model.allowed[hire]!;
  const from = Math.floor(draw() * allowed.length);
  for (let at = 0; at < allowed.length; at++) {
    const vehicle = allowed[(from + at) % allowed.length]!;
    if (open[vehicle] === 0 || !isFree(seating, hire, vehicle)) continue;
    const more = costOf(hire, vehicle);
    seat(seating, hire, vehicle);
    tryFrom(walk, k + 1, value + seating.model.value[hire]!, cost + more);
    unseat(seating, hire);
  }
  tryFrom(walk, k + 1, value, cost);
}

function keep(walk: Walk, cost: number): void {
  const { seating, hires } = walk.task;
  const score = scoreOf(walk.task, cost);
  const better = walk.best === null ? 1 : compareScores(score, walk.best);
  if (better < 0 || (better === 0 && walk.on !== null)) return;
  walk.best = score;
  walk.on = hires.map((hire) => seating.on[hire]!);
}
