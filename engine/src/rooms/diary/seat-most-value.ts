import type { AllocationModel } from "./allocation-model.ts";
import { chainRoom, seatByChain } from "./seat-by-chain.ts";
import { seatEverybody } from "./seat-everybody.ts";
import { aheadOf, fillSeating, isFree, type Seating, seat, seatByForce } from "./seating.ts";

export interface ValueSearch {
  readonly seating: Seating;
  readonly open: Uint8Array;
  readonly draw: () => number;
  readonly isOver: () => boolean;
  /** keep hires where they stand today as far as can be */
  readonly keepNow: boolean;
}

/** Seats what it can: first those that stand somewhere today, then the others, dearest first. */
export function seatByValue({ seating, open, draw, keepNow, isOver }: ValueSearch): void {
  const { model } = seating;
  const room = chainRoom(model.hires);
  const canSeat = seatable(model);
  if (keepNow) seatWhereTheyStand(seating, canSeat);
  const byValue = canSeat
    .filter((hire) => seating.on[hire]! < 0)
    .sort((a, b) => model.value[b]! - model.value[a]!);
  const waiting = byValue.filter(
    (hire) =>
      !(isOver() ? seatIfFree(seating, hire, open) : seatByChain(seating, room, hire, open, draw, 2000)),
  );
  for (const hire of waiting) turnOutCheaper(seating, hire);
}

function seatIfFree(seating: Seating, hire: number, open: Uint8Array): boolean {
  for (const vehicle of seating.model.allowed[hire]!) {
    if (open[vehicle] === 0 || !isFree(seating, hire, vehicle)) continue;
    seat(seating, hire, vehicle);
    return true;
  }
  return false;
}

/** Hires that some vehicle may serve. */
export const seatable = (model: AllocationModel) =>
  [...model.allowed.keys()].filter((hire) => model.allowed[hire]!.length > 0);

/** Searches on, dear hires harder to turn out, until `bound` is reached; leaves the most value found in place. */
export function seatMoreValue({ seating, open, draw, isOver }: ValueSearch, bound: number): void {
  const { model } = seating;
  const out = seatable(model).filter((hire) => seating.on[hire]! < 0);
  if (out.length === 0) return;
  const total = seatable(model).reduce((sum, hire) => sum + model.value[hire]!, 0);
  const mean = total / model.hires || 1;
  const hardness = model.value.map((value) => (6 * value) / mean);
  let best = seating.on.slice();
  let most = -1;
  const look = (waiting: readonly number[]) => {
    const value = total - waiting.reduce((sum, hire) => sum + model.value[hire]!, 0);
    if (value <= most + 1e-9) return;
    most = value;
    best = seating.on.slice();
  };
  const isDone = () => most >= bound - 1e-6 * Math.max(1, bound) || isOver();
  seatEverybody({ seating, room: chainRoom(model.hires), open, hardness, draw, isOver: isDone, look }, out);
  fillSeating(seating, best);
}

function seatWhereTheyStand(seating: Seating, hires: readonly number[]): void {
  const { model } = seating;
  const standing = hires.filter((hire) => {
    const now = model.now[hire]!;
    return now >= 0 && model.may[hire * model.vehicles + now] === 1;
  });
  for (const hire of standing.sort((a, b) => model.value[b]! - model.value[a]!))
    if (isFree(seating, hire, model.now[hire]!)) seat(seating, hire, model.now[hire]!);
}

/** Seats a hire where those that have to leave are worth less together and cannot be seated otherwise. */
function turnOutCheaper(seating: Seating, hire: number): boolean {
  const { model } = seating;
  const { startRank, endRank, value } = model;
  let best = -1;
  let least = value[hire]!;
  for (const vehicle of model.allowed[hire]!) {
    let sum = 0;
    for (
      let other = aheadOf(seating, vehicle, startRank[hire]!);
      other >= 0 && startRank[other]! < endRank[hire]! && sum < least;
      other = seating.after[other]!
    )
      sum += value[other]!;
    if (sum < least) [best, least] = [vehicle, sum];
  }
  if (best >= 0) seatByForce(seating, hire, best);
  return best >= 0;
}
