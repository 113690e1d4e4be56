import { Temporal } from "../../base/time.ts";
import { addDays } from "../../base/years.ts";
import type { NearestChange } from "./types.ts";

/** A half-open period in milliseconds of the epoch. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** Whether two hires of one vehicle get in each other's way, with the turnaround after whichever is first. */
export function overlaps(a: Span, b: Span, turnaroundMs: number): boolean {
  return a.start < b.end + turnaroundMs && b.start < a.end + turnaroundMs;
}

const QUARTER_MS = 900_000;
const HOUR_MS = 3_600_000;
const MINUTE_MS = 60_000;
/** so far it is looked for a start with somebody there at both ends: a week has every day of it */
const MOST_QUARTERS = 8 * 24 * 4;
/** so many places of a side are tried, nearest first */
const MOST_PLACES = 4;

export interface ShiftsAsked {
  readonly asked: Span;
  /** what holds the vehicle around then */
  readonly taken: readonly Span[];
  readonly turnaroundMs: number;
  readonly timeZone: string;
  /** whether somebody is there to hand over or take back at a civil time of the depot; always where left out */
  readonly isOpen?: (local: string) => boolean;
}

/**
 * The nearest earlier and the nearest later start at which a hire of the same length fits; nearest first. Where opening
 * hours are given, one at which the depot is open at both ends; where there is none within eight days, the nearest at all.
 */
export function nearestShifts(shifts: ShiftsAsked): NearestChange[] {
  const { asked, taken, turnaroundMs, timeZone } = shifts;
  const length = asked.end - asked.start;
  const starts = taken.flatMap(({ start, end }) => [
    Math.ceil((end + turnaroundMs) / QUARTER_MS) * QUARTER_MS,
    Math.floor((start - turnaroundMs - length) / QUARTER_MS) * QUARTER_MS,
  ]);
  const away = (start: number) => Math.abs(start - asked.start);
  const nearest = (side: readonly number[]) => {
    const places = side
      .filter((start) => isFree(start, shifts))
      .sort((a, b) => away(a) - away(b))
      .slice(0, MOST_PLACES);
    const open = places.reduce<number | null>(
      // what begins further away than an open one cannot be nearer
      (best, start) => {
        if (best !== null && away(best) <= away(start)) return best;
        const found = openStart(start, shifts);
        return found !== null && (best === null || away(found) < away(best)) ? found : best;
      },
      null,
    );
    return open ?? places[0];
  };
  return [
    nearest(starts.filter((start) => start < asked.start)),
    nearest(starts.filter((start) => start > asked.start)),
  ]
    .filter((start): start is number => start !== undefined)
    .sort((a, b) => away(a) - away(b))
    .map((start) => ({
      kind: "shift",
      from: localOf(start, timeZone),
      to: localOf(start + length, timeZone),
      shiftHours: (start - asked.start) / HOUR_MS,
    }));
}

const isFree = (start: number, { asked, taken, turnaroundMs }: ShiftsAsked): boolean =>
  taken.every((each) => !overlaps({ start, end: start + asked.end - asked.start }, each, turnaroundMs));

/** From a start that is free, away from what was asked: the first quarter of an hour with somebody there at both ends. */
function openStart(first: number, shifts: ShiftsAsked): number | null {
  const { asked, timeZone, isOpen = () => true } = shifts;
  const length = asked.end - asked.start;
  const step = first < asked.start ? -QUARTER_MS : QUARTER_MS;
  const [from, to] = [clockFrom(localOf(first, timeZone)), clockFrom(localOf(first + length, timeZone))];
  for (let k = 0; k < MOST_QUARTERS; k++) {
    const start = first + k * step;
    if (!isFree(start, shifts)) return null;
    // by the clock as it stood at the beginning first, which is cheap; a clock change on the way moves it by an hour
    const mayBe = (clock: typeof from) =>
      [0, -60, 60].some((moved) => isOpen(clock((k * step) / MINUTE_MS + moved)));
    if (
      mayBe(from) &&
      mayBe(to) &&
      isOpen(localOf(start, timeZone)) &&
      isOpen(localOf(start + length, timeZone))
    )
      return start;
  }
  return null;
}

/** A clock that no change moves: so many minutes on from a civil time, as a civil time. */
function clockFrom(local: string): (minutes: number) => string {
  const dates = new Map<number, string>();
  const begin = Number(local.slice(11, 13)) * 60 + Number(local.slice(14, 16));
  return (minutes) => {
    const whole = begin + minutes;
    const days = Math.floor(whole / 1440);
    const date = dates.get(days) ?? addDays(local.slice(0, 10), days);
    dates.set(days, date);
    const rest = whole - days * 1440;
    const two = (n: number) => String(n).padStart(2, "0");
    return `${date}T${two(Math.floor(rest / 60))}:${two(rest % 60)}`;
  };
}

function localOf(epochMs: number, timeZone: string): string {
  return Temporal.Instant.fromEpochMilliseconds(epochMs)
    .toZonedDateTimeISO(timeZone)
    .toPlainDateTime()
    .toString({ smallestUnit: "minute" });
}
