import type { AllocationModel } from "./allocation-model.ts";
import { improvePlan, movesOf } from "./improve-plan.ts";
import { mostOutAtOnce } from "./most-out-at-once.ts";
import { type ReseatTask, reseatBest, scoreOf } from "./reseat-best.ts";
import { seatable, seatByValue, seatMoreValue } from "./seat-most-value.ts";
import { aheadOf, emptySeating, fillSeating, type Seating, unseat } from "./seating.ts";
import { horizonOf } from "./sellable.ts";
import { thinOut } from "./thin-out.ts";
import { boundValue } from "./value-bound.ts";

export interface FindSearch {
  readonly fewest: boolean;
  readonly draw: () => number;
  readonly isOver: () => boolean;
  readonly onProgress?: (best: number, bound: number) => void;
}
export interface FoundAllocation {
  readonly seating: Seating;
  readonly lowerBound: number;
  readonly upperBound: number;
  readonly proven: boolean;
}

/** up to so many hires every way is tried, as far as the limit goes */
const SMALL = 40;
const SMALL_TRIES = 100_000;
const BOUND_ROUNDS = 300;

/** Seats as much value as can be on as few vehicles as can be, and says what is proven. */
export function findFewest(model: AllocationModel, search: FindSearch): FoundAllocation {
  const seating = emptySeating(model);
  const open = new Uint8Array(model.vehicles);
  const hires = seatable(model);
  const out = mostOutAtOnce(model, (hire) => model.allowed[hire]!.length > 0);
  const value = { seating, open, keepNow: false, ...search };
  openBestCovered(model, open, out);
  seatByValue(value);
  open.fill(1);
  seatByValue(value);
  let upperBound = boundFor(seating, hires, search.isOver);
  seatMoreValue(value, upperBound);
  let lowerBound = leastVehicles(seating, hires, out);
  const draws = search.onProgress === undefined ? {} : { onProgress: search.onProgress };
  if (hires.every((hire) => seating.on[hire]! >= 0))
    thinOut({ seating, open, draw: search.draw, isOver: search.isOver, ...draws }, lowerBound);
  let proven = reaches(seating, upperBound) && usedOf(seating) <= lowerBound;
  if (!proven && tryEveryWay(seating, hires, search)) {
    proven = true;
    upperBound = seatedValue(seating);
    lowerBound = usedOf(seating);
  }
  return { seating, lowerBound: Math.min(lowerBound, usedOf(seating)), upperBound, proven };
}

/** Seats as much value as can be, then with fewest moves, then with most sellable gaps. */
export function findPlan(model: AllocationModel, search: FindSearch): FoundAllocation {
  const seating = emptySeating(model);
  const open = new Uint8Array(model.vehicles).fill(1);
  const hires = seatable(model);
  const out = mostOutAtOnce(model, (hire) => model.allowed[hire]!.length > 0);
  const value = { seating, open, keepNow: true, ...search };
  seatByValue(value);
  let upperBound = boundFor(seating, hires, search.isOver);
  let proven = tryEveryWay(seating, hires, search);
  if (proven) upperBound = seatedValue(seating);
  else {
    const isHalfOver = halfOf(search);
    seatMoreValue({ ...value, isOver: isHalfOver }, upperBound);
    improvePlan({ seating, horizon: horizonOf(model), ...search }, Math.min(3000, 200 + 20 * hires.length));
    const isFull = hires.every((hire) => seating.on[hire]! >= 0);
    proven = reaches(seating, upperBound) && movesIn(seating) <= (isFull ? forcedMoves(model) : 0);
  }
  const lowerBound = Math.min(leastVehicles(seating, hires, out), usedOf(seating));
  return { seating, lowerBound, upperBound, proven };
}

/** Over when the search is, or after as many steps as it takes to look for value at all. */
function halfOf({ isOver }: FindSearch): () => boolean {
  let steps = 0;
  return () => ++steps > 20_000 || isOver();
}

/** Opens as many vehicles as are surely needed, those first that serve many hires which few others serve. */
function openBestCovered(model: AllocationModel, open: Uint8Array, count: number): void {
  const worth = new Float64Array(model.vehicles);
  for (const allowed of model.allowed)
    for (const vehicle of allowed) worth[vehicle] = worth[vehicle]! + 1 / allowed.length;
  const ranked = [...worth.keys()].sort((a, b) => worth[b]! - worth[a]!);
  for (const vehicle of ranked.slice(0, count)) open[vehicle] = 1;
}

const seatedValue = ({ model, on }: Seating) =>
  on.reduce((sum, vehicle, hire) => sum + (vehicle < 0 ? 0 : model.value[hire]!), 0);

/** What no plan passes: everything where everybody has a seat, else a bound that takes some reckoning. */
function boundFor(seating: Seating, hires: readonly number[], isOver: () => boolean): number {
  if (hires.every((hire) => seating.on[hire]! >= 0)) return seatedValue(seating);
  let rounds = 0;
  return boundValue(seating.model, seatedValue(seating), () => ++rounds > BOUND_ROUNDS || isOver());
}

const reaches = (seating: Seating, bound: number) =>
  seatedValue(seating) >= bound - 1e-9 * Math.max(1, bound);

const usedOf = (seating: Seating) =>
  seating.model.off.reduce((sum, _, vehicle) => sum + (aheadOf(seating, vehicle, 0) < 0 ? 0 : 1), 0);

/** Vehicles that a plan of this value needs at least; where hires are refused, only if all are worth the same. */
function leastVehicles({ model, on }: Seating, hires: readonly number[], out: number): number {
  const refused = hires.filter((hire) => on[hire]! < 0).length;
  const isEqual = hires.every((hire) => model.value[hire] === model.value[hires[0]!]);
  const least = Math.min(1, hires.length - refused);
  return refused === 0 || isEqual ? Math.max(least, out - refused) : least;
}

const movesIn = (seating: Seating) =>
  seating.on.reduce((sum, vehicle, hire) => sum + (vehicle < 0 ? 0 : movesOf(seating)(hire, vehicle)), 0);

/** Hires that may not stay where they stand today. */
const forcedMoves = ({ now, may, vehicles }: AllocationModel) =>
  now.reduce((sum, vehicle, hire) => sum + (vehicle >= 0 && may[hire * vehicles + vehicle] === 0 ? 1 : 0), 0);

/** Tries every way to seat a few hires; true where that came to an end, and then the best is in place. */
function tryEveryWay(
  seating: Seating,
  hires: readonly number[],
  { fewest, draw, isOver }: FindSearch,
): boolean {
  if (hires.length > SMALL) return false;
  const before = seating.on.slice();
  const task: ReseatTask = {
    seating,
    hires,
    open: new Uint8Array(seating.model.vehicles).fill(1),
    costOf: fewest ? (_, vehicle) => (aheadOf(seating, vehicle, 0) < 0 ? 1 : 0) : movesOf(seating),
    gapsOf: seating.model.off.map((_, vehicle) => vehicle),
    horizon: fewest ? null : horizonOf(seating.model),
    limit: SMALL_TRIES,
    draw,
    isOver,
  };
  const least = scoreOf(task, fewest ? usedOf(seating) : movesIn(seating));
  for (const hire of hires) if (seating.on[hire]! >= 0) unseat(seating, hire);
  const { score, complete } = reseatBest(task, least);
  if (score === null) fillSeating(seating, before);
  return complete;
}
