import { aheadOf, routeOf, type Seating, seat, unseat } from "./seating.ts";

/** One vehicle takes over from another what it may serve. */
export interface VehicleSwap {
  readonly closes: number;
  readonly opens: number;
  /** how hard those are to seat that would be left without a seat */
  readonly cost: number;
}

/**
 * The cheapest way to seat a hire on a vehicle that is not in use: it opens, takes over what it may from one in use,
 * which closes, and the rest waits. Null where each way costs at least `most`.
 */
export function cheapestSwap(
  seating: Seating,
  hire: number,
  open: Uint8Array,
  hardness: Float64Array,
  most: number,
): VehicleSwap | null {
  const { may, vehicles, startRank, endRank, allowed } = seating.model;
  let best: VehicleSwap | null = null;
  let least = most;
  for (const opens of allowed[hire]!) {
    if (open[opens] === 1) continue;
    for (let closes = 0; closes < vehicles; closes++) {
      if (open[closes] === 0) continue;
      let cost = 0;
      for (let each = aheadOf(seating, closes, 0); each >= 0; each = seating.after[each]!) {
        const meets = startRank[each]! < endRank[hire]! && startRank[hire]! < endRank[each]!;
        if (meets || may[each * vehicles + opens] === 0) cost += 1 + hardness[each]!;
        if (cost >= least) break;
      }
      if (cost < least) {
        least = cost;
        best = { closes, opens, cost };
      }
    }
  }
  return best;
}

/** Swaps the vehicles, seats the hire, and gives back those left without a seat. */
export function swapVehicles(seating: Seating, hire: number, open: Uint8Array, swap: VehicleSwap): number[] {
  const { may, vehicles, startRank, endRank } = seating.model;
  const out: number[] = [];
  for (const each of routeOf(seating, swap.closes)) {
    unseat(seating, each);
    const meets = startRank[each]! < endRank[hire]! && startRank[hire]! < endRank[each]!;
    if (meets || may[each * vehicles + swap.opens] === 0) out.push(each);
    else seat(seating, each, swap.opens);
  }
  seat(seating, hire, swap.opens);
  open[swap.closes] = 0;
  open[swap.opens] = 1;
  return out;
}
