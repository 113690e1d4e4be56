import { parse } from "csv-parse/sync";
import { badField } from "../api/refusal.ts";

export const ENCODINGS = ["utf-8", "windows-1252"] as const;
export type Encoding = (typeof ENCODINGS)[number];

export const MOST_BYTES = 10_000_000;
export const MOST_ROWS = 5000;

export interface TableRow {
  /** line of the file on which it begins, 1 for the first */
  readonly line: number;
  /** by the name of the column; "" where there is nothing */
  readonly values: Readonly<Record<string, string>>;
  /** more cells than the header has */
  readonly isTooLong: boolean;
}
export interface ReadTable {
  readonly encoding: Encoding;
  readonly delimiter: string;
  readonly columns: readonly string[];
  readonly ignored: readonly string[];
  readonly rows: readonly TableRow[];
}
/** A question that only a person can answer. */
export interface EncodingQuestion {
  readonly question: "encoding";
  /** a line that shows it, read as Windows-1252 */
  readonly sample: string;
}

export interface Columns {
  readonly needed: readonly string[];
  readonly other: readonly string[];
}

const decode = (bytes: Uint8Array, encoding: Encoding): string =>
  new TextDecoder(encoding, { fatal: true }).decode(bytes);

function isUtf8(bytes: Uint8Array): boolean {
  try {
    decode(bytes, "utf-8");
    return true;
  } catch {
    return false;
  }
}

/** A line with a letter that is not plain ASCII. */
const tellingLine = (text: string): string =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: whatever is not ASCII is what is looked for
  (text.split(/\r?\n/).find((line) => /[^\u0000-\u007f]/.test(line)) ?? "").slice(0, 200);

/** Bytes as text: UTF-8 where they are, with or without its mark; Windows-1252 only where a person says so. */
function readText(
  bytes: Uint8Array,
  said: Encoding | null,
): { text: string; encoding: Encoding } | EncodingQuestion {
  const [a, b] = bytes;
  if ((a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff))
    throw badField("file", "expected UTF-8 or Windows-1252; this is UTF-16. Save it as CSV UTF-8");
  if (bytes.includes(0))
    throw badField("file", "expected a text file of comma-separated values; this holds zero bytes");
  if (isUtf8(bytes)) {
    if (said === "windows-1252" && tellingLine(decode(bytes, "utf-8")) !== "")
      throw badField("encoding", "expected utf-8: the file is valid UTF-8");
    return { text: decode(bytes, "utf-8"), encoding: "utf-8" };
  }
  if (said === "utf-8") throw badField("encoding", "expected windows-1252: the file is not valid UTF-8");
  const text = decode(bytes, "windows-1252");
  return said === null ? { question: "encoding", sample: tellingLine(text) } : { text, encoding: said };
}

/** `First registered`, `first_registered` and `FirstRegistered` are one column. */
const fold = (name: string): string => name.toLowerCase().replaceAll(/[^a-z0-9]/g, "");

interface Parsed {
  readonly record: readonly string[];
  readonly info: { readonly lines: number };
}

/** Records with the line on which each ends. */
function split(text: string, delimiter: string, to?: number): readonly Parsed[] {
  try {
    const options = {
      bom: true,
      delimiter,
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
      skip_records_with_empty_values: true,
      trim: true,
      max_record_size: 100_000,
      ...(to === undefined ? {} : { to }),
    };
    return parse(text, options) as unknown as Parsed[]; // its types do not know `info`
  } catch (error) {
    const why = error instanceof Error ? error.message.slice(0, 200) : "";
    throw badField("file", `expected comma-separated values (RFC 4180): ${why}`);
  }
}

const known = (header: readonly string[], names: readonly string[]) =>
  names.filter((name) => header.map(fold).includes(fold(name)));

/** Comma, semicolon or tab: whichever gives a header with the most columns that we know. */
function findDelimiter(text: string, columns: Columns): { delimiter: string; header: readonly string[] } {
  const tried = [",", ";", "\t"].map((delimiter) => {
    let header: readonly string[] = [];
    try {
      header = split(text, delimiter, 1)[0]?.record ?? [];
    } catch {
      // a quote in the header that belongs to another delimiter
    }
    return { delimiter, header, hits: known(header, [...columns.needed, ...columns.other]).length };
  });
  const best = tried.reduce((a, b) => (b.hits > a.hits ? b : a));
  const lacking = columns.needed.filter((name) => known(best.header, [name]).length === 0);
  if (lacking.length > 0)
    throw badField(
      "file",
      `expected a first line with the columns ${lacking.join(", ")}, which are not there`,
    );
  const twice = best.header.find(
    (name, k) => best.header.findIndex((each) => fold(each) === fold(name)) !== k,
  );
  if (twice !== undefined) throw badField("file", `expected each column once; ${twice} is there twice`);
  return best;
}

/** Our own export puts an apostrophe before what a spreadsheet would take for a formula; it is taken away again. */
const plain = (value: string): string => (/^'[=+\-@\t\r]/.test(value) ? value.slice(1) : value);

/**
 * Reads comma-separated values. What concerns the whole file is refused by name; what concerns a row is left to
 * whoever checks the rows.
 */
export function readTable(
  bytes: Uint8Array,
  columns: Columns,
  said: Encoding | null,
): ReadTable | EncodingQuestion {
  if (bytes.length === 0) throw badField("file", "expected a file that is not empty");
  const read = readText(bytes, said);
  if ("question" in read) return read;
  const { text, encoding } = read;
  const { delimiter, header } = findDelimiter(text, columns);
  const names = [...columns.needed, ...columns.other];
  const nameOf = header.map((cell) => names.find((name) => fold(name) === fold(cell)) ?? null);
  const parsed = split(text, delimiter);
  if (parsed.length - 1 > MOST_ROWS)
    throw badField("file", `expected at most ${MOST_ROWS} rows; cut it in parts`);
  const rows = parsed.slice(1).map(({ record, info }): TableRow => {
    const cells = record.flatMap((cell, k) => {
      const name = nameOf[k];
      return name === null || name === undefined ? [] : [[name, plain(cell)] as const];
    });
    const breaks = record.join("").split("\n").length - 1;
    return {
      line: info.lines - breaks,
      values: { ...Object.fromEntries(names.map((name) => [name, ""])), ...Object.fromEntries(cells) },
      isTooLong: record.length > header.length,
    };
  });
  const ignored = header.filter((_, k) => nameOf[k] === null && header[k] !== "");
  return { encoding, delimiter, columns: known(header, names), ignored, rows };
}
