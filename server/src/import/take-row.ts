import { isMailAddress } from "../mail/addresses.ts";
import type { TableRow } from "./read-table.ts";

/** Why a row is not taken. */
export interface RejectedRow {
  readonly line: number;
  readonly column: string;
  readonly value: string;
  readonly expected: string;
}
/** What became of a row that is taken, in words of the data itself. */
export interface AcceptedRow {
  readonly line: number;
  readonly title: string;
  readonly text: string;
}

/** A row that is not taken: thrown where it is found out, caught by whoever goes through the rows. */
export class RowRejected extends Error {
  readonly rejected: RejectedRow;
  constructor(row: TableRow, column: string, expected: string) {
    super(expected);
    this.rejected = { line: row.line, column, value: (row.values[column] ?? "").slice(0, 120), expected };
  }
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not stand in a text
const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/;

/** A text of a row, "" where it is empty. */
export function textAt(row: TableRow, column: string, max: number): string {
  if (row.isTooLong)
    throw new RowRejected(row, column, "no more cells than the first line has; is a quote missing?");
  const value = row.values[column] ?? "";
  if (value.length > max) throw new RowRejected(row, column, `at most ${max} characters`);
  if (CONTROL.test(value)) throw new RowRejected(row, column, "text without control characters");
  return value;
}

export function neededAt(row: TableRow, column: string, max: number): string {
  const value = textAt(row, column, max);
  if (value === "") throw new RowRejected(row, column, "something; it is empty");
  return value;
}

export function mailAt(row: TableRow, column: string): string {
  const value = neededAt(row, column, 200);
  if (!isMailAddress(value))
    throw new RowRejected(row, column, "an e-mail address, such as name@example.org");
  return value;
}

/** A whole number; `fallback` where it is empty. */
export function wholeAt(
  row: TableRow,
  column: string,
  range: readonly [number, number],
  fallback: number | null,
): number {
  const value = textAt(row, column, 20);
  if (value === "" && fallback !== null) return fallback;
  const [min, max] = range;
  const number = /^\d{1,6}$/.test(value) ? Number(value) : Number.NaN;
  if (!(number >= min && number <= max))
    throw new RowRejected(row, column, `a whole number from ${min} to ${max}, without a unit or a point`);
  return number;
}

/** A number with a point and at most so many places; the words of a refusal show one. */
export function decimalAt(
  row: TableRow,
  column: string,
  { min, max, places, like }: { min: number; max: number; places: number; like: string },
): number {
  const value = neededAt(row, column, 20);
  const number = new RegExp(`^\\d{1,7}(\\.\\d{1,${places}})?$`).test(value) ? Number(value) : Number.NaN;
  if (!(number >= min && number <= max))
    throw new RowRejected(
      row,
      column,
      `a number from ${min} to ${max} without a sign or a unit, such as ${like}`,
    );
  return number;
}

export function choiceAt<const Choice extends string>(
  row: TableRow,
  column: string,
  choices: readonly Choice[],
  fallback: Choice | null,
): Choice {
  const value = textAt(row, column, 60);
  if (value === "" && fallback !== null) return fallback;
  const found = choices.find(
    (choice) => choice.toLowerCase() === value.toLowerCase().replaceAll(/[\s_-]/g, ""),
  );
  if (found === undefined) throw new RowRejected(row, column, `one of ${choices.join(", ")}`);
  return found;
}
