/** How a date is written: `day` Fri 3 July · `long` Friday 3 July 2026 · `time` 12:15 · `dayTime` Fri 3 July 12:15 · `short` 3 Jul 2026 · `full` Fri 3 July 2026 · `fullTime` with its time · `monthDay` 3 Jul, of any year */
export type DateStyle = "day" | "long" | "time" | "dayTime" | "short" | "full" | "fullTime" | "monthDay";

const PARTS: Readonly<Record<Exclude<DateStyle, "dayTime" | "fullTime">, Intl.DateTimeFormatOptions>> = {
  day: { weekday: "short", day: "numeric", month: "long" },
  long: { weekday: "long", day: "numeric", month: "long" },
  full: { weekday: "short", day: "numeric", month: "long", year: "numeric" },
  monthDay: { day: "numeric", month: "short" },
  short: { day: "numeric", month: "short", year: "numeric" },
  time: { hour: "2-digit", minute: "2-digit", hourCycle: "h23" },
};

const CIVIL = /^\d{4}-\d{2}-\d{2}(T\d{2}:\d{2}(:\d{2})?)?$/;
const INSTANT = /^\d{4}-\d{2}-\d{2}T.*(Z|[+-]\d{2}:\d{2})$/;

export const isDateText = (text: string): boolean => CIVIL.test(text) || INSTANT.test(text);

/**
 * Writes a civil date (`YYYY-MM-DD`), a civil time (`YYYY-MM-DDTHH:MM`) or an instant (with `Z`, shown in
 * `timeZone`). Throws on anything else.
 */
export function writeDate(locale: string, iso: string, style: DateStyle, timeZone?: string): string {
  const civil = CIVIL.test(iso);
  if (!civil && !INSTANT.test(iso))
    throw new RangeError(`date: ${iso} is neither a civil date nor an instant`);
  const withTime = iso.includes("T") ? iso.slice(0, 16) : `${iso}T00:00`;
  const moment = new Date(civil ? `${withTime}:00Z` : iso);
  const zone = civil ? "UTC" : (timeZone ?? "UTC");
  const write = (part: keyof typeof PARTS) => writer(locale, part, zone).format(moment).replace(",", "");
  if (style === "dayTime") return `${write("day")} ${write("time")}`;
  return style === "fullTime" ? `${write("full")} ${write("time")}` : write(style);
}

/** Made once for each language, style and zone: to make one takes far longer than to write with it. */
const writers = new Map<string, Intl.DateTimeFormat>();

function writer(locale: string, part: keyof typeof PARTS, timeZone: string): Intl.DateTimeFormat {
  const key = `${locale} ${part} ${timeZone}`;
  const made = writers.get(key) ?? new Intl.DateTimeFormat(locale, { ...PARTS[part], timeZone });
  writers.set(key, made);
  return made;
}
