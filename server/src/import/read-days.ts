import { badField } from "../api/refusal.ts";

/** Day, month and year in one of these orders; `iso` is YYYY-MM-DD. */
export const DATE_ORDERS = ["iso", "dmy", "mdy"] as const;
export type DateOrder = (typeof DATE_ORDERS)[number];

const ISO = /^(\d{4})-(\d{2})-(\d{2})(?:[ T](\d{1,2}:\d{2}))?(?::00)?$/;
const PARTS = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4})(?: (\d{1,2}:\d{2}))?(?::00)?$/;

export interface DayAndTime {
  /** YYYY-MM-DD */
  readonly day: string;
  /** HH:MM, or null */
  readonly time: string | null;
}

function exists(year: string, month: string, day: string): string | null {
  const text = `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
  const date = new Date(`${text}T00:00:00Z`);
  return Number.isNaN(date.getTime()) || date.toISOString().slice(0, 10) !== text ? null : text;
}

function clock(text: string | undefined): string | null | undefined {
  if (text === undefined) return null;
  const padded = text.padStart(5, "0");
  return /^([01]\d|2[0-3]):[0-5]\d$/.test(padded) ? padded : undefined;
}

/** A day, with its time where there is one, in a stated order; null where it is not written so or does not exist. */
export function readDay(text: string, order: DateOrder): DayAndTime | null {
  const found = (order === "iso" ? ISO : PARTS).exec(text);
  if (found === null) return null;
  const [, a = "", b = "", c = "", d = ""] = found;
  const day = order === "iso" ? exists(a, b, c) : order === "dmy" ? exists(d, c, a) : exists(d, a, c);
  const time = clock(order === "iso" ? found[4] : found[5]);
  return day === null || time === undefined ? null : { day, time };
}

export interface OrderQuestion {
  readonly question: "dateOrder";
  readonly sample: string;
}

/** Where a day stands, for the words of a refusal. */
export interface WrittenDay {
  readonly line: number;
  readonly text: string;
}

/**
 * In which order the days of a file are written. Never guessed: one that fits all of them is taken and told, two
 * that fit are asked about, and a file that mixes them is refused with a line of each.
 */
export function findDateOrder(
  days: readonly WrittenDay[],
  said: DateOrder | null,
): DateOrder | OrderQuestion {
  const written = days.filter(({ text }) => text !== "");
  const iso = written.find(({ text }) => ISO.test(text));
  const parts = written.filter(({ text }) => PARTS.test(text));
  const [first] = parts;
  if (iso !== undefined && first !== undefined)
    throw badField(
      "file",
      `expected days written in one way; line ${iso.line} has ${iso.text}, line ${first.line} has ${first.text}`,
    );
  if (first === undefined) return "iso";
  const notDmy = parts.find(({ text }) => readDay(text, "dmy") === null && readDay(text, "mdy") !== null);
  const notMdy = parts.find(({ text }) => readDay(text, "mdy") === null && readDay(text, "dmy") !== null);
  if (notDmy !== undefined && notMdy !== undefined)
    throw badField(
      "file",
      `expected days written in one order; line ${notMdy.line} has ${notMdy.text}, line ${notDmy.line} has ${notDmy.text}`,
    );
  if (said !== null) return said;
  if (notMdy !== undefined) return "dmy";
  if (notDmy !== undefined) return "mdy";
  return { question: "dateOrder", sample: first.text };
}
