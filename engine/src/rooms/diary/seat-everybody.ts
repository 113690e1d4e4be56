import { exchange, relocate } from "./exchange.ts";
import { type ChainRoom, seatByChain } from "./seat-by-chain.ts";
import { aheadOf, type Seating, seatByForce } from "./seating.ts";
import { cheapestSwap, swapVehicles } from "./swap-vehicle.ts";

/** a chain is looked for over so many hires; longer searches seat hardly more and cost more */
const CHAIN_HIRES = 300;

/** What the search needs besides the seating. */
export interface SeatSearch {
  readonly seating: Seating;
  readonly room: ChainRoom;
  /** 1 for the vehicles that may be used */
  readonly open: Uint8Array;
  /** how hard each hire was to seat so far */
  readonly hardness: Float64Array;
  /** uniform in (0, 1) */
  readonly draw: () => number;
  /** asked before each step; true ends the search */
  readonly isOver: () => boolean;
  /** told after each step how many are without a seat */
  readonly look?: (waiting: readonly number[]) => void;
}

/**
 * Seats all who wait, by chains of moves, and where there is no chain by turning out those that have been easiest to
 * seat so far, which then wait in turn. True when nobody waits. The way of counting hardness follows Nagata and
 * Bräysy, Operations Research Letters 37 (2009) 333-338 (from memory), who thin out the vehicles of delivery rounds.
 */
export function seatEverybody(search: SeatSearch, waiting: number[]): boolean {
  const { seating, room, open, hardness, draw } = search;
  while (waiting.length > 0) {
    search.look?.(waiting);
    if (search.isOver()) return false;
    const hire = takeFrom(waiting, draw);
    if (seatByChain(seating, room, hire, open, draw, CHAIN_HIRES)) continue;
    hardness[hire]!++;
    const [vehicle, cost] = easiestTurnout(search, hire);
    const swap = cheapestSwap(seating, hire, open, hardness, cost);
    if (swap !== null) waiting.push(...swapVehicles(seating, hire, open, swap));
    else if (vehicle < 0) waiting.push(hire);
    else waiting.push(...seatByForce(seating, hire, vehicle));
    shake(search, 30);
  }
  search.look?.(waiting);
  return true;
}

function takeFrom(waiting: number[], draw: () => number): number {
  const at = Math.floor(draw() * waiting.length);
  const hire = waiting[at]!;
  waiting[at] = waiting.at(-1)!;
  waiting.pop();
  return hire;
}

/** The open vehicle where those that would have to leave have been easiest to seat; -1 where none is open to it. */
function easiestTurnout({ seating, open, hardness, draw }: SeatSearch, hire: number): [number, number] {
  const { startRank, endRank, allowed } = seating.model;
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  for (const vehicle of allowed[hire]!) {
    if (open[vehicle] === 0) continue;
    let sum = draw() * 0.9;
    for (
      let other = aheadOf(seating, vehicle, startRank[hire]!);
      other >= 0 && startRank[other]! < endRank[hire]! && sum < least;
      other = seating.after[other]!
    )
      sum += 1 + hardness[other]!;
    if (sum < least) [best, least] = [vehicle, sum];
  }
  return [best, least];
}

/** Moves a few hires about without leaving anybody out. */
function shake({ seating, open, draw }: SeatSearch, times: number): void {
  const { model, on } = seating;
  for (let k = 0; k < times; k++) {
    const hire = Math.floor(draw() * model.hires);
    const allowed = model.allowed[hire]!;
    if (on[hire]! < 0 || allowed.length === 0) continue;
    const vehicle = allowed[Math.floor(draw() * allowed.length)]!;
    if (open[vehicle] === 0) continue;
    if (!relocate(seating, hire, vehicle)) exchange(seating, hire, vehicle, 8);
  }
}
