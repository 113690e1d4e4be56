import type { IsoDate } from "./time.ts";

const PLAIN = /^\d{4}-\d{2}-\d{2}$/;
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
/** days of a common year before each month */
const BEFORE = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334] as const;

/** A civil date taken apart, as a forecast asks it of each of its days. */
export interface DayParts {
  readonly year: number;
  /** 1 January to 12 */
  readonly month: number;
  /** 1 to 31 */
  readonly day: number;
  /** 1 to 366 */
  readonly dayOfYear: number;
  readonly inLeapYear: boolean;
}

const isLeap = (year: number) => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
const daysIn = (year: number, month: number) => (month === 2 && isLeap(year) ? 29 : MONTH_DAYS[month - 1]!);

/** Takes a date `YYYY-MM-DD` of the Gregorian calendar apart, by plain sums. Throws RangeError where there is no such day. */
export function partsOf(date: IsoDate): DayParts {
  const [year, month, day] = [Number(date.slice(0, 4)), Number(date.slice(5, 7)), Number(date.slice(8))];
  if (!PLAIN.test(date) || month < 1 || month > 12 || day < 1 || day > daysIn(year, month))
    throw new RangeError(`${date}: expected a day that exists, YYYY-MM-DD`);
  const inLeapYear = isLeap(year);
  const dayOfYear = BEFORE[month - 1]! + day + (inLeapYear && month > 2 ? 1 : 0);
  return { year, month, day, dayOfYear, inLeapYear };
}

const two = (value: number) => (value < 10 ? `0${value}` : `${value}`);

/** So many civil dates one after another from the first on. Throws RangeError where the first is no day. */
export function datesFrom(first: IsoDate, count: number): IsoDate[] {
  let { year, month, day } = partsOf(first);
  return Array.from({ length: count }, () => {
    const date = `${`${year}`.padStart(4, "0")}-${two(month)}-${two(day)}`;
    day += 1;
    if (day > daysIn(year, month)) {
      day = 1;
      month = month === 12 ? 1 : month + 1;
      if (month === 1) year += 1;
    }
    return date;
  });
}
