import type { AllocationModel } from "./allocation-model.ts";

/**
 * Who sits where while the planner searches. Each vehicle's hires are linked by start; `ahead` gives at vehicle ×
 * moments + rank the hire that is out then or goes out next, so that a search asks without walking. -1 is nobody.
 */
export interface Seating {
  readonly model: AllocationModel;
  /** vehicle of each hire */
  readonly on: Int32Array;
  readonly ahead: Int32Array;
  readonly before: Int32Array;
  readonly after: Int32Array;
}

/** A seating with nobody seated. */
export function emptySeating(model: AllocationModel): Seating {
  const none = (length: number) => new Int32Array(length).fill(-1);
  return {
    model,
    on: none(model.hires),
    ahead: none(model.vehicles * model.moments),
    before: none(model.hires),
    after: none(model.hires),
  };
}

/** Takes over who sits where from a list by hire; -1 leaves it out. */
export function fillSeating(seating: Seating, on: Int32Array): void {
  for (const list of [seating.on, seating.ahead, seating.before, seating.after]) list.fill(-1);
  on.forEach((vehicle, hire) => {
    if (vehicle >= 0) seat(seating, hire, vehicle);
  });
}

/** The hire of a vehicle that is out at a moment or goes out next; -1 where none. */
export const aheadOf = ({ model, ahead }: Seating, vehicle: number, rank: number) =>
  ahead[vehicle * model.moments + rank]!;

/** The hires of a vehicle that a hire would meet, by start. */
export function meetings(seating: Seating, hire: number, vehicle: number): number[] {
  const { startRank, endRank } = seating.model;
  const met: number[] = [];
  for (
    let other = aheadOf(seating, vehicle, startRank[hire]!);
    other >= 0 && startRank[other]! < endRank[hire]!;
    other = seating.after[other]!
  )
    met.push(other);
  return met;
}

/** Whether a hire would meet nobody on a vehicle. */
export function isFree(seating: Seating, hire: number, vehicle: number): boolean {
  const { startRank, endRank } = seating.model;
  const other = aheadOf(seating, vehicle, startRank[hire]!);
  return other < 0 || startRank[other]! >= endRank[hire]!;
}

/** The hires of a vehicle, by start. */
export function routeOf(seating: Seating, vehicle: number): number[] {
  const route: number[] = [];
  for (let hire = aheadOf(seating, vehicle, 0); hire >= 0; hire = seating.after[hire]!) route.push(hire);
  return route;
}

/** Seats a hire that meets nobody there. */
export function seat(seating: Seating, hire: number, vehicle: number): void {
  const { model, on, ahead, before, after } = seating;
  const at = vehicle * model.moments;
  const next = ahead[at + model.startRank[hire]!]!;
  const last = next >= 0 ? before[next]! : lastBefore(seating, at, model.startRank[hire]!);
  on[hire] = vehicle;
  after[hire] = next;
  before[hire] = last;
  if (next >= 0) before[next] = hire;
  if (last >= 0) after[last] = hire;
  ahead.fill(hire, at + (last >= 0 ? model.endRank[last]! : 0), at + model.endRank[hire]!);
}

/** The last hire of a vehicle, where none is ahead at that moment. */
function lastBefore({ model, ahead, after }: Seating, at: number, rank: number): number {
  let low = 0;
  let high = rank;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (ahead[at + middle]! < 0) high = middle;
    else low = middle + 1;
  }
  if (low === 0) return -1;
  const hire = ahead[at + low - 1]!;
  if (after[hire]! >= 0 || model.endRank[hire]! !== low) throw new Error("seating: a route is out of order");
  return hire;
}

/** Takes a hire from its vehicle. */
export function unseat({ model, on, ahead, before, after }: Seating, hire: number): void {
  const at = on[hire]! * model.moments;
  const [last, next] = [before[hire]!, after[hire]!];
  if (next >= 0) before[next] = last;
  if (last >= 0) after[last] = next;
  ahead.fill(next, at + (last >= 0 ? model.endRank[last]! : 0), at + model.endRank[hire]!);
  on[hire] = -1;
}

/** Puts a hire on a vehicle and gives back those that had to leave. */
export function seatByForce(seating: Seating, hire: number, vehicle: number): number[] {
  const out = meetings(seating, hire, vehicle);
  for (const each of out) unseat(seating, each);
  seat(seating, hire, vehicle);
  return out;
}
