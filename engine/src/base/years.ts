import { type IsoDate, Temporal } from "./time.ts";

/** Full years from one civil date to another; a birthday counts on its day (29 February on 1 March in common years). */
export function fullYears(from: IsoDate, to: IsoDate): number {
  const [start, end] = [Temporal.PlainDate.from(from), Temporal.PlainDate.from(to)];
  const passed = end.month > start.month || (end.month === start.month && end.day >= start.day);
  return end.year - start.year - (passed ? 0 : 1);
}

/** The day on which so many full years are reached. */
export function anniversary(from: IsoDate, years: number): IsoDate {
  const start = Temporal.PlainDate.from(from);
  const leapDay =
    start.month === 2 &&
    start.day === 29 &&
    !Temporal.PlainDate.from({ year: start.year + years, month: 1, day: 1 }).inLeapYear;
  return leapDay ? `${start.year + years}-03-01` : start.add({ years }).toString();
}

/** The civil date so many calendar months later; the last day of a month where the day is missing there. */
export function monthsAfter(date: IsoDate, months: number): IsoDate {
  return Temporal.PlainDate.from(date).add({ months }).toString();
}

/** The civil date moved by whole days. */
export function addDays(date: IsoDate, days: number): IsoDate {
  return Temporal.PlainDate.from(date).add({ days }).toString();
}

/** Whole days from one civil date to another; negative backwards. */
export function daysBetween(from: IsoDate, to: IsoDate): number {
  return Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to), { largestUnit: "days" }).days;
}
