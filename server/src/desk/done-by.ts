import { hoursOn, type OpeningHours } from "@setfair/engine";

const MINUTE_MS = 60_000;
const DAY_MS = 86_400_000;
/** A depot that does not open within so many days says nothing of when. */
const MOST_DAYS = 60;

const civil = (ms: number): string => new Date(ms).toISOString().slice(0, 16);
/** `24:00` is the midnight that ends the day. */
const clockMs = (clock: string): number => {
  const [hours = 0, minutes = 0] = clock.split(":").map(Number);
  return (hours * 60 + minutes) * MINUTE_MS;
};

/**
 * When work of so many minutes is done that begins at `now` and is done while the depot is open (common practice, no
 * source). Civil times of the depot, `YYYY-MM-DDTHH:MM`; a day on which clocks change counts as any other. A depot
 * that never opens works through.
 */
export function doneBy(now: string, minutes: number, hours: OpeningHours): string {
  const begin = Date.parse(`${now}Z`);
  const midnight = Date.parse(`${now.slice(0, 10)}T00:00Z`);
  let left = minutes * MINUTE_MS;
  for (let day = 0; day < MOST_DAYS; day++) {
    const start = midnight + day * DAY_MS;
    const open = hoursOn(hours, civil(start).slice(0, 10));
    if (open === null) continue;
    const from = Math.max(begin, start + clockMs(open.opens));
    const room = start + clockMs(open.closes) - from;
    if (room <= 0) continue;
    if (left <= room) return civil(from + left);
    left -= room;
  }
  return civil(begin + minutes * MINUTE_MS);
}
