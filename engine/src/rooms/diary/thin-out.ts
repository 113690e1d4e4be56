import { chainRoom } from "./seat-by-chain.ts";
import { seatEverybody } from "./seat-everybody.ts";
import { aheadOf, fillSeating, routeOf, type Seating, unseat } from "./seating.ts";

export interface ThinSearch {
  readonly seating: Seating;
  readonly open: Uint8Array;
  readonly draw: () => number;
  readonly isOver: () => boolean;
  readonly onProgress?: (used: number, bound: number) => void;
}

/**
 * Takes one vehicle after another out of use and seats its hires on the others, until `bound` vehicles are left or the
 * search is over; leaves the fewest found in place. Everybody must have a seat; the number of vehicles used.
 */
export function thinOut({ seating, open, draw, isOver, onProgress }: ThinSearch, bound: number): number {
  const { model } = seating;
  const room = chainRoom(model.hires);
  const hardness = new Float64Array(model.hires);
  closeIdle(seating, open);
  let best = seating.on.slice();
  let used = countOpen(open);
  while (used > bound && !isOver()) {
    onProgress?.(used, bound);
    const closing = easiestToClose(seating, open, hardness);
    const waiting = routeOf(seating, closing);
    for (const hire of waiting) unseat(seating, hire);
    open[closing] = 0;
    if (!seatEverybody({ seating, room, open, hardness, draw, isOver }, waiting)) break;
    closeIdle(seating, open);
    best = seating.on.slice();
    used = countOpen(open);
  }
  fillSeating(seating, best);
  return used;
}

const countOpen = (open: Uint8Array) => open.reduce((sum, each) => sum + each, 0);

function closeIdle(seating: Seating, open: Uint8Array): void {
  for (let vehicle = 0; vehicle < open.length; vehicle++)
    if (aheadOf(seating, vehicle, 0) < 0) open[vehicle] = 0;
}

function easiestToClose(seating: Seating, open: Uint8Array, hardness: Float64Array): number {
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let vehicle = 0; vehicle < open.length; vehicle++) {
    if (open[vehicle] === 0) continue;
    const cost = routeOf(seating, vehicle).reduce((sum, hire) => sum + 1 + hardness[hire]!, 0);
    if (cost < least) [best, least] = [vehicle, cost];
  }
  return best;
}
