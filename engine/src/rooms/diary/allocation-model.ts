import { Temporal } from "../../base/time.ts";
import type { AllocationInput } from "./allocation-types.ts";

/**
 * The input of the planner in numbers. Hires stand by start (then by end, then as given); `startRank` and `endRank`
 * count through the distinct moments at which something starts or is ready again, so that two hires of one vehicle
 * meet exactly where startRank < the other's endRank both ways. The turnaround is in `endRank`.
 */
export interface AllocationModel {
  readonly hires: number;
  readonly vehicles: number;
  /** index in the input of each hire */
  readonly given: Int32Array;
  /** how many moments the ranks count */
  readonly moments: number;
  readonly startRank: Int32Array;
  readonly endRank: Int32Array;
  readonly startMinute: Float64Array;
  /** end without the turnaround */
  readonly endMinute: Float64Array;
  readonly value: Float64Array;
  /** vehicles that may serve it and are not off the road then, by index */
  readonly allowed: readonly Int32Array[];
  /** 1 at hire × vehicles + vehicle where that vehicle may serve that hire */
  readonly may: Uint8Array;
  /** index of the vehicle where it stands today; -1 where none */
  readonly now: Int32Array;
  readonly turnaround: number;
  readonly sellable: number;
  /** by vehicle: minutes off the road, by start, apart */
  readonly off: readonly (readonly (readonly [number, number])[])[];
}

/** where all are to be seated, one that is worth nothing is still worth its seat */
const WORTH_A_SEAT = 0.001;

const minuteOf = (instant: string) => Temporal.Instant.from(instant).epochMilliseconds / 60_000;

/** Turns a parsed input into numbers. */
export function modelAllocation(input: AllocationInput): AllocationModel {
  const index = new Map(input.vehicles.map(({ id }, k) => [id, k]));
  const off = input.vehicles.map(({ unavailable }) =>
    unavailable.map(({ from, to }) => [minuteOf(from), minuteOf(to)] as const).sort((a, b) => a[0] - b[0]),
  );
  const rows = input.hires
    .map((hire, k) => ({ hire, k, start: minuteOf(hire.from), end: minuteOf(hire.to) }))
    .sort((a, b) => a.start - b.start || a.end - b.end || a.k - b.k);
  const startMinute = Float64Array.from(rows, ({ start }) => start);
  const endMinute = Float64Array.from(rows, ({ end }) => end);
  const allowed = rows.map(({ hire, start, end }) => {
    const listed = hire.fixed === undefined ? [...new Set(hire.vehicles)] : [hire.fixed];
    const free = listed.map((id) => index.get(id)!).filter((v) => isOnTheRoad(off[v]!, start, end));
    return Int32Array.from(free).sort();
  });
  const vehicles = input.vehicles.length;
  const may = new Uint8Array(rows.length * vehicles);
  allowed.forEach((list, h) => {
    for (const v of list) may[h * vehicles + v] = 1;
  });
  return {
    hires: rows.length,
    vehicles,
    given: Int32Array.from(rows, ({ k }) => k),
    ...ranksOf(startMinute, endMinute, input.turnaroundMinutes),
    startMinute,
    endMinute,
    value: Float64Array.from(rows, ({ hire }) =>
      input.objective === "fewest-vehicles" ? Math.max(hire.value, WORTH_A_SEAT) : hire.value,
    ),
    allowed,
    may,
    now: Int32Array.from(rows, ({ hire }) => (hire.now === undefined ? -1 : index.get(hire.now)!)),
    turnaround: input.turnaroundMinutes,
    sellable: input.sellableMinutes,
    off,
  };
}

const isOnTheRoad = (off: readonly (readonly [number, number])[], start: number, end: number) =>
  off.every(([from, to]) => end <= from || to <= start);

function ranksOf(start: Float64Array, end: Float64Array, turnaround: number) {
  const ready = end.map((minute) => minute + turnaround);
  const moments = [...new Set([...start, ...ready])].sort((a, b) => a - b);
  const rank = new Map(moments.map((minute, k) => [minute, k]));
  return {
    moments: Math.max(1, moments.length),
    startRank: Int32Array.from(start, (minute) => rank.get(minute)!),
    endRank: Int32Array.from(ready, (minute) => rank.get(minute)!),
  };
}
