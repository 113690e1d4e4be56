import { addDays } from "../dates.ts";

/** Easter Sunday of a year in the Gregorian calendar (O'Beirne's form of the ecclesiastical rule, 1961). */
export function easterOf(year: number): string {
  const century = Math.floor(year / 100);
  const golden = year % 19;
  const correction = century - Math.floor(century / 4) - Math.floor((8 * century + 13) / 25);
  const epact = (19 * golden + correction + 15) % 30;
  const moon =
    epact - Math.floor(epact / 28) * (1 - Math.floor(29 / (epact + 1)) * Math.floor((21 - golden) / 11));
  const weekday = (year + Math.floor(year / 4) + moon + 2 - century + Math.floor(century / 4)) % 7;
  const offset = moon - weekday;
  return addDays(`${year}-03-28`, offset);
}

/** First and last days of the school holidays of a year, in the pattern usual in England (practice; each council sets its own). */
export function schoolHolidays(year: number): readonly (readonly [string, string])[] {
  const easter = easterOf(year);
  return [
    [`${year}-01-01`, `${year}-01-03`],
    [`${year}-02-13`, `${year}-02-22`],
    [addDays(easter, -9), addDays(easter, 8)],
    [`${year}-05-24`, `${year}-06-01`],
    [`${year}-07-21`, `${year}-09-02`],
    [`${year}-10-23`, `${year}-11-01`],
    [`${year}-12-19`, `${year}-12-31`],
  ];
}

export function isSchoolHoliday(date: string): boolean {
  return schoolHolidays(Number(date.slice(0, 4))).some(([first, last]) => date >= first && date <= last);
}

/** 0 Sunday to 6 Saturday. */
export const weekdayOf = (date: string): number => new Date(`${date}T00:00:00Z`).getUTCDay();

/** Share of days out by month, January first (practice: busy in summer, quiet after Christmas). */
const BUSY = [0.18, 0.28, 0.38, 0.55, 0.68, 0.76, 0.92, 0.95, 0.72, 0.5, 0.26, 0.3] as const;

/** How likely a vehicle is out on a day, 0 to 1. */
export function demandOn(date: string): number {
  const month = BUSY[Number(date.slice(5, 7)) - 1] ?? 0.5;
  return Math.min(0.97, isSchoolHoliday(date) ? Math.max(month + 0.2, 0.6) : month);
}
