/** Days of the invented year, all counted from the day on which the demo is loaded. */
const DAY = 86_400_000;

/** `YYYY-MM-DD`, `days` after a date. */
export function addDays(date: string, days: number): string {
  return new Date(Date.parse(`${date}T00:00:00Z`) + days * DAY).toISOString().slice(0, 10);
}

/** The second Friday of the next May that is at least a fortnight ahead. */
export function mayFriday(today: string): string {
  const year = Number(today.slice(0, 4));
  for (const candidate of [year, year + 1]) {
    const first = `${candidate}-05-01`;
    const weekday = new Date(`${first}T00:00:00Z`).getUTCDay();
    const friday = addDays(first, ((5 - weekday + 7) % 7) + 7);
    if (friday >= addDays(today, 14)) return friday;
  }
  throw new RangeError(`mayFriday: ${today} has no May ahead`);
}

/** The same day some years before; 29 February becomes 28. */
export function yearsBefore(date: string, years: number): string {
  const [year = "", month = "", day = ""] = date.split("-");
  return `${Number(year) - years}-${month}-${month === "02" && day === "29" ? "28" : day}`;
}
