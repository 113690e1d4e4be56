import { compareScores, type ReseatTask, reseatBest, scoreOf } from "./reseat-best.ts";
import { aheadOf, type Seating, seat, unseat } from "./seating.ts";

export interface PlanSearch {
  readonly seating: Seating;
  readonly horizon: readonly [number, number];
  readonly draw: () => number;
  readonly isOver: () => boolean;
}

const MOST_HIRES = 8;
const TRIES = 3000;

/** What a seat adds to the number of moves. */
export const movesOf =
  ({ model }: Seating) =>
  (hire: number, vehicle: number): number =>
    model.now[hire]! >= 0 && model.now[hire] !== vehicle ? 1 : 0;

/**
 * Betters a plan by taking a few hires of a few vehicles out at a time and seating them again in the best way there
 * is: more value, then fewer moves, then more sellable gaps. Ends after `patience` rounds without a better plan.
 */
export function improvePlan(search: PlanSearch, patience: number): void {
  const { seating, draw } = search;
  const open = new Uint8Array(seating.model.vehicles);
  for (let idle = 0; idle < patience && !search.isOver(); idle++) {
    const focus = chooseFocus(seating, draw);
    const vehicles = chooseVehicles(seating, focus, draw);
    for (const vehicle of vehicles) open[vehicle] = 1;
    const hires = chooseHires(seating, focus, vehicles, draw);
    if (reseat(search, hires, vehicles, open)) idle = 0;
    for (const vehicle of vehicles) open[vehicle] = 0;
  }
}

/** True where the plan became better; an equally good one is taken too. */
function reseat(
  { seating, horizon, draw }: PlanSearch,
  hires: readonly number[],
  vehicles: readonly number[],
  open: Uint8Array,
): boolean {
  const costOf = movesOf(seating);
  const task: ReseatTask = { seating, hires, open, costOf, gapsOf: vehicles, horizon, limit: TRIES, draw };
  const before = hires.map((hire) => seating.on[hire]!);
  const moves = hires.reduce((sum, hire, k) => sum + (before[k]! < 0 ? 0 : costOf(hire, before[k]!)), 0);
  const least = scoreOf(task, moves);
  hires.forEach((hire, k) => {
    if (before[k]! >= 0) unseat(seating, hire);
  });
  const { score } = reseatBest(task, least);
  if (score !== null) return compareScores(score, least) > 0;
  hires.forEach((hire, k) => {
    if (before[k]! >= 0) seat(seating, hire, before[k]!);
  });
  return false;
}

/** Every second time one that is without a seat or was moved, where there is one. */
function chooseFocus({ model, on }: Seating, draw: () => number): number {
  const any = Math.floor(draw() * model.hires);
  if (draw() < 0.5) return any;
  for (let k = 0; k < model.hires; k++) {
    const hire = (any + k) % model.hires;
    if (
      model.allowed[hire]!.length > 0 &&
      (on[hire]! < 0 || (model.now[hire]! >= 0 && on[hire] !== model.now[hire]))
    )
      return hire;
  }
  return any;
}

function chooseVehicles({ model, on }: Seating, focus: number, draw: () => number): number[] {
  const chosen = new Set([on[focus]!, model.now[focus]!].filter((vehicle) => vehicle >= 0));
  const allowed = model.allowed[focus]!;
  for (let k = 0; k < 2 && allowed.length > 0; k++) chosen.add(allowed[Math.floor(draw() * allowed.length)]!);
  return [...chosen];
}

/** The hires about the focus on those vehicles, and some without a seat at that time; the nearest, by start. */
function chooseHires(
  seating: Seating,
  focus: number,
  vehicles: readonly number[],
  draw: () => number,
): number[] {
  const { startMinute, endMinute, hires } = seating.model;
  const middle = (hire: number) => (startMinute[hire]! + endMinute[hire]!) / 2;
  const near = vehicles.flatMap((vehicle) => {
    const route: number[] = [];
    for (let hire = aheadOf(seating, vehicle, 0); hire >= 0; hire = seating.after[hire]!) route.push(hire);
    return route;
  });
  const from = Math.floor(draw() * hires);
  for (let k = 0, more = 0; k < hires && more < 3; k++) {
    const hire = (from + k) % hires;
    if (seating.on[hire]! >= 0 || hire === focus) continue;
    if (endMinute[hire]! < startMinute[focus]! || startMinute[hire]! > endMinute[focus]!) continue;
    near.push(hire);
    more++;
  }
  const about = middle(focus);
  const nearest = near
    .filter((hire) => hire !== focus)
    .sort((a, b) => Math.abs(middle(a) - about) - Math.abs(middle(b) - about))
    .slice(0, MOST_HIRES - 1);
  return [focus, ...nearest].sort((a, b) => a - b);
}
