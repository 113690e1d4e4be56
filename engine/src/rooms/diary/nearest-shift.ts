import { Temporal } from "../../base/time.ts";
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

/** The nearest earlier and the nearest later start at which a hire of the same length fits; nearest first. */
export function nearestShifts(
  asked: Span,
  taken: readonly Span[],
  turnaroundMs: number,
  timeZone: string,
): NearestChange[] {
  const length = asked.end - asked.start;
  const starts = taken.flatMap(({ start, end }) => [
    Math.ceil((end + turnaroundMs) / QUARTER_MS) * QUARTER_MS,
    Math.floor((start - turnaroundMs - length) / QUARTER_MS) * QUARTER_MS,
  ]);
  const fits = starts.filter((start) =>
    taken.every((each) => !overlaps({ start, end: start + length }, each, turnaroundMs)),
  );
  const nearest = (side: readonly number[]) =>
    [...side].sort((a, b) => Math.abs(a - asked.start) - Math.abs(b - asked.start))[0];
  const chosen = [
    nearest(fits.filter((start) => start < asked.start)),
    nearest(fits.filter((start) => start > asked.start)),
  ];
  return chosen
    .filter((start): start is number => start !== undefined)
    .sort((a, b) => Math.abs(a - asked.start) - Math.abs(b - asked.start))
    .map((start) => ({
      kind: "shift",
      from: localOf(start, timeZone),
      to: localOf(start + length, timeZone),
      shiftHours: (start - asked.start) / 3_600_000,
    }));
}

function localOf(epochMs: number, timeZone: string): string {
  return Temporal.Instant.fromEpochMilliseconds(epochMs)
    .toZonedDateTimeISO(timeZone)
    .toPlainDateTime()
    .toString({ smallestUnit: "minute" });
}
