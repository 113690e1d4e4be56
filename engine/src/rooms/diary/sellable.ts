import { routeOf, type Seating } from "./seating.ts";

/** First start and last end of all hires, in minutes; 0 and 0 where there are none. */
export function horizonOf({ startMinute, endMinute, hires }: Seating["model"]): readonly [number, number] {
  if (hires === 0) return [0, 0];
  return [startMinute[0]!, endMinute.reduce((most, end) => Math.max(most, end))];
}

/** Further hires of the sellable length that a vehicle's free time would still hold within the horizon. */
export function sellableOf(
  seating: Seating,
  vehicle: number,
  [first, last]: readonly [number, number],
): number {
  const { model } = seating;
  const { turnaround, sellable } = model;
  const busy = [
    ...routeOf(seating, vehicle).map(
      (hire) => [model.startMinute[hire]! - turnaround, model.endMinute[hire]! + turnaround] as const,
    ),
    ...model.off[vehicle]!,
  ].sort((a, b) => a[0] - b[0]);
  let count = 0;
  let free = first;
  const add = (until: number) => {
    const more = Math.max(0, Math.floor((until - free + turnaround) / (sellable + turnaround)));
    count += more;
    // the last of them is turned round before the next, also where the vehicle is off in between
    free += more * (sellable + turnaround);
  };
  for (const [from, to] of busy) {
    add(Math.min(from, last));
    free = Math.max(free, to);
  }
  add(last);
  return count;
}
