import { type Seating, seat, unseat } from "./seating.ts";

/** What a chain search keeps between calls, so that none is made anew. */
export interface ChainRoom {
  /** the call in which a hire was last seen */
  readonly seen: Int32Array;
  readonly queue: Int32Array;
  /** place in the queue of the hire that takes its seat */
  readonly parent: Int32Array;
  /** the vehicle on which the parent would sit */
  readonly seat: Int32Array;
  calls: number;
}

/** Room for chains over so many hires. */
export const chainRoom = (hires: number): ChainRoom => ({
  seen: new Int32Array(hires),
  queue: new Int32Array(hires + 1),
  parent: new Int32Array(hires + 1),
  seat: new Int32Array(hires + 1),
  calls: 0,
});

/**
 * Seats a hire by the shortest chain of moves found: it takes the seat of one hire, that one the seat of another, and
 * so on until one finds a vehicle free. Nobody is left without a seat. False where there is no such chain.
 * @param open - 1 for the vehicles that may be used
 * @param draw - uniform in (0, 1); the order in which vehicles are tried hangs on it
 */
export function seatByChain(
  seating: Seating,
  room: ChainRoom,
  hire: number,
  open: Uint8Array,
  draw: () => number,
  limit: number,
): boolean {
  const { seen, queue, parent } = room;
  const call = ++room.calls;
  seen[hire] = call;
  queue[0] = hire;
  parent[0] = -1;
  let tail = 1;
  for (let at = 0; at < tail && at < limit; at++) {
    const allowed = seating.model.allowed[queue[at]!]!;
    const from = Math.floor(draw() * allowed.length);
    for (let k = 0; k < allowed.length; k++) {
      const vehicle = allowed[from + k < allowed.length ? from + k : from + k - allowed.length]!;
      if (open[vehicle] === 0 || vehicle === seating.on[queue[at]!]) continue;
      const met = onlyMeeting(seating, queue[at]!, vehicle);
      if (met === -2 || (met >= 0 && seen[met] === call) || meetsItsOwn(seating, room, at, vehicle)) continue;
      if (met === -1) {
        moveChain(seating, room, at, vehicle);
        return true;
      }
      seen[met] = call;
      queue[tail] = met;
      parent[tail] = at;
      room.seat[tail] = vehicle;
      tail++;
    }
  }
  return false;
}

/** The one hire that it would meet; -1 none, -2 several. */
function onlyMeeting({ model, ahead, after }: Seating, hire: number, vehicle: number): number {
  const { startRank } = model;
  const end = model.endRank[hire]!;
  const first = ahead[vehicle * model.moments + startRank[hire]!]!;
  if (first < 0 || startRank[first]! >= end) return -1;
  const second = after[first]!;
  return second >= 0 && startRank[second]! < end ? -2 : first;
}

/** Whether the hire would meet one that this very chain puts on that vehicle. */
function meetsItsOwn({ model }: Seating, room: ChainRoom, at: number, vehicle: number): boolean {
  const { startRank, endRank } = model;
  const hire = room.queue[at]!;
  for (let k = at; room.parent[k]! >= 0; k = room.parent[k]!) {
    if (room.seat[k] !== vehicle) continue;
    const other = room.queue[room.parent[k]!]!;
    if (startRank[hire]! < endRank[other]! && startRank[other]! < endRank[hire]!) return true;
  }
  return false;
}

function moveChain(seating: Seating, room: ChainRoom, at: number, vehicle: number): void {
  let to = vehicle;
  for (let k = at; k >= 0; k = room.parent[k]!) {
    const hire = room.queue[k]!;
    const left = seating.on[hire]!;
    if (left >= 0) unseat(seating, hire);
    seat(seating, hire, to);
    to = left;
  }
}
