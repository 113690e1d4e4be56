import { BadInput } from "@setfair/engine";
import type { JsonObject, Page, Paged } from "./types.ts";

/** A document as the tables hold it. */
export const toText = (document: JsonObject): string => JSON.stringify(document);

export const fromText = (text: string): JsonObject => JSON.parse(text) as JsonObject;

/** Any ISO 8601 instant in the one form the tables hold: UTC with milliseconds, so that text order is time order. */
export function toInstantText(value: string, field: string): string {
  const at = /(Z|[+-]\d{2}:?\d{2})$/.test(value) ? Date.parse(value) : Number.NaN;
  if (Number.isNaN(at))
    throw new BadInput([{ path: field, expected: "an instant, ISO 8601 with Z or offset" }]);
  const date = new Date(at);
  if (date.getUTCFullYear() < 1900 || date.getUTCFullYear() > 9999) {
    throw new BadInput([{ path: field, expected: "an instant between the years 1900 and 9999" }]);
  }
  return date.toISOString();
}

export function toDateText(value: string, field: string): string {
  const date = /^\d{4}-\d{2}-\d{2}$/.test(value) ? new Date(`${value}T00:00:00Z`) : null;
  if (date === null || Number.isNaN(date.getTime()) || date.toISOString().slice(0, 10) !== value) {
    throw new BadInput([{ path: field, expected: "a civil date YYYY-MM-DD" }]);
  }
  return value;
}

const MOST_ROWS = 200;
const USUAL_ROWS = 50;

export function rowsOf(page: Page): number {
  const limit = page.limit ?? USUAL_ROWS;
  if (!Number.isInteger(limit) || limit < 1)
    throw new BadInput([{ path: "limit", expected: `1 to ${MOST_ROWS}` }]);
  return Math.min(limit, MOST_ROWS);
}

/** Where a page ended, as an opaque word: the sort keys of its last row. */
function writeCursor(keys: readonly [string, string]): string {
  return Buffer.from(JSON.stringify(keys)).toString("base64url");
}

export function readCursor(cursor: string): [string, string] {
  try {
    const keys: unknown = JSON.parse(Buffer.from(cursor, "base64url").toString("utf8"));
    if (Array.isArray(keys) && keys.length === 2 && keys.every((key) => typeof key === "string")) {
      return keys as [string, string];
    }
  } catch {
    // falls through: it was not one of ours
  }
  throw new BadInput([{ path: "after", expected: "what the page before gave as next" }]);
}

/** One page of rows asked for one beyond its limit; `keysOf` names the sort keys that the next page goes on from. */
export function pageOf<Row, Read>(
  rows: readonly Row[],
  limit: number,
  read: (row: Row) => Read,
  keysOf: (last: Read) => readonly [string, string],
): Paged<Read> {
  const shown = rows.slice(0, limit).map(read);
  const last = shown.at(-1);
  return {
    rows: shown,
    next: rows.length > limit && last !== undefined ? writeCursor(keysOf(last)) : null,
  };
}
