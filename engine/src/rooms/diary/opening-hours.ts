import * as z from "zod/mini";
import type { Finding } from "../../base/finding.ts";
import type { IsoDate, IsoLocal } from "../../base/time.ts";
import { addDays } from "../../base/years.ts";
import { makeFinding } from "../make-finding.ts";
import { isoDateSchema } from "../situation.ts";

/** Days of the week by ISO 8601: Monday first. */
export const WEEKDAYS = [
  "monday",
  "tuesday",
  "wednesday",
  "thursday",
  "friday",
  "saturday",
  "sunday",
] as const;
export type Weekday = (typeof WEEKDAYS)[number];

const opensSchema = z.string().check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$/, "expected a time as HH:MM"));
const closesSchema = z
  .string()
  .check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$|^24:00$/, "expected a time as HH:MM, at the latest 24:00"));
const daySchema = z.nullable(z.strictObject({ opens: opensSchema, closes: closesSchema }));

/** {@link OpeningHours} as part of an input. */
export const openingHoursSchema = z.strictObject({
  week: z.strictObject({
    monday: daySchema,
    tuesday: daySchema,
    wednesday: daySchema,
    thursday: daySchema,
    friday: daySchema,
    saturday: daySchema,
    sunday: daySchema,
  }),
  closed: z.array(z.strictObject({ from: isoDateSchema, to: isoDateSchema, name: z.string() })),
});

/** Hours of one day as civil times `HH:MM` of the depot; `24:00` is the midnight that ends the day. */
export interface DayHours {
  readonly opens: string;
  readonly closes: string;
}

/** When somebody is there to hand keys over and take them back, as the firm entered it. */
export interface OpeningHours {
  /** the same each week; null: closed all day */
  readonly week: Readonly<Record<Weekday, DayHours | null>>;
  /** public holidays and other days on which it is closed whatever the week says; first and last day */
  readonly closed: readonly { readonly from: IsoDate; readonly to: IsoDate; readonly name: string }[];
}

/** The same hours on all seven days, never closed. */
export function sameEveryDay(hours: DayHours): OpeningHours {
  return {
    week: {
      monday: hours,
      tuesday: hours,
      wednesday: hours,
      thursday: hours,
      friday: hours,
      saturday: hours,
      sunday: hours,
    },
    closed: [],
  };
}

/** days of a year before each month, 29 February left out */
const DAYS_BEFORE = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

/** Day of the week of a civil date, by counting days: asked for thousands of times where other times are looked for. */
export function weekdayOf(date: IsoDate): Weekday {
  const [year = 1, month = 1, day = 1] = date.split("-").map(Number);
  const isLeap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const whole = year - 1;
  const leapDays = Math.floor(whole / 4) - Math.floor(whole / 100) + Math.floor(whole / 400);
  // days since the day before 0001-01-01, which is a Monday in the Gregorian calendar carried back
  const days = whole * 365 + leapDays + DAYS_BEFORE[month - 1]! + (isLeap && month > 2 ? 1 : 0) + day;
  // 0 to 6, and there are seven
  return WEEKDAYS[(days - 1) % 7]!;
}

/** What the firm calls the days on which it is closed then, or null where it is not; empty where they have no name. */
export function closedAs({ closed }: OpeningHours, date: IsoDate): string | null {
  return closed.find(({ from, to }) => from <= date && date <= to)?.name ?? null;
}

/** The hours of a civil date; null where it is closed all day. */
export function hoursOn(hours: OpeningHours, date: IsoDate): DayHours | null {
  return closedAs(hours, date) === null ? hours.week[weekdayOf(date)] : null;
}

/**
 * Whether somebody is there at a civil time of the depot; opening and closing time themselves count, so that the midnight
 * which ends a day still belongs to it. Clock changes move nothing: a depot opens by the clock on its wall.
 */
export function isOpenAt(hours: OpeningHours, local: IsoLocal): boolean {
  const [date, time] = [local.slice(0, 10), local.slice(11, 16)];
  const day = hoursOn(hours, date);
  if (day !== null && day.opens <= time && time <= day.closes) return true;
  return time === "00:00" && hoursOn(hours, addDays(date, -1))?.closes === "24:00";
}

export interface OpeningAsked {
  readonly hours: OpeningHours;
  /** civil times at which the keys go out and come back */
  readonly from: IsoLocal;
  readonly to: IsoLocal;
}

/**
 * Keys that would go out or come back while the depot is closed. The firm may do it all the same: somebody says why, and
 * for this very time, so that another time is asked about anew.
 */
export function checkOpening({ hours, from, to }: OpeningAsked): readonly Finding[] {
  return [
    ...(isOpenAt(hours, from) ? [] : [findClosed("diary.closedOut", hours, from)]),
    ...(isOpenAt(hours, to) ? [] : [findClosed("diary.closedBack", hours, to)]),
  ];
}

function findClosed(code: string, hours: OpeningHours, local: IsoLocal): Finding {
  const date = local.slice(0, 10);
  const day = hoursOn(hours, date);
  const name = closedAs(hours, date);
  return makeFinding("diary", code, "refer", "policy", {
    facts: {
      at: local,
      why: day === null ? (name === null ? "weekday" : "holiday") : "hours",
      name: name ?? "",
      named: name === null || name === "" ? "no" : "yes",
      weekday: weekdayOf(date),
      opens: day?.opens ?? "",
      closes: day?.closes ?? "",
    },
    mends: ["diary.openTime", "diary.sayWhy"],
    about: local,
  });
}
