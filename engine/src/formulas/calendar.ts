/** Weeks and clock changes, which the diary and the handover slots rest on. */
import * as z from "zod/mini";
import { BadInput } from "../base/bad-input.ts";
import { Temporal } from "../base/time.ts";
import { entry } from "./entry.ts";

/** Week of ISO 8601: its own year, its number (1 to 53) and the day in it (1 is Monday). */
export function isoWeek(date: string): { year: number; week: number; day: number } {
  const day = Temporal.PlainDate.from(date);
  const thursday = day.add({ days: 4 - day.dayOfWeek });
  return { year: thursday.year, week: Math.ceil(thursday.dayOfYear / 7), day: day.dayOfWeek };
}

/** The instants at which a zone's clocks change in a year, ISO 8601 in UTC; null where they do not. */
export function clockChanges(
  year: number,
  timeZone: string,
): { first: string | null; second: string | null } {
  const start = startOf(year, timeZone);
  const changes: string[] = [];
  for (let at = start.getTimeZoneTransition("next"); at !== null && at.year === year; ) {
    changes.push(at.toInstant().toString());
    at = at.getTimeZoneTransition("next");
  }
  return { first: changes[0] ?? null, second: changes[1] ?? null };
}

function startOf(year: number, timeZone: string) {
  try {
    return Temporal.PlainDate.from({ year, month: 1, day: 1 }).toZonedDateTime(timeZone);
  } catch {
    throw new BadInput([{ path: "timeZone", expected: "expected a time zone such as Europe/London" }]);
  }
}

const year = z.int().check(z.minimum(1970), z.maximum(2100));

export const CALENDAR_FORMULAS = [
  entry("calendar.isoWeek", "–", "iso-8601", "week of the year", { date: z.iso.date() }, (a) =>
    isoWeek(a.date),
  ),
  entry(
    "calendar.clockChanges",
    "–",
    "clock-changes",
    "last Sundays of March and October, 01:00 UTC in Europe",
    { year, timeZone: z.string().check(z.minLength(1), z.maxLength(60)) },
    (a) => clockChanges(a.year, a.timeZone),
  ),
];
