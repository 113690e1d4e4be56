import { gunzipSync } from "node:zlib";
import type { Io } from "./io.ts";
import { InputError } from "./usage-error.ts";
import { WORDS } from "./words.ts";

const LIMIT_BYTES = 64 * 1024 * 1024;

/** Reads JSON from a file, or from standard input for `-`; `.gz` is read as gzip. Throws InputError. */
export async function readJson(io: Io, file: string): Promise<unknown> {
  const bytes = file === "-" ? await io.readStandardInput() : await readBytes(io, file);
  if (bytes.length > LIMIT_BYTES) throw new InputError(WORDS.t("cli.tooLong", { file, limit: LIMIT_BYTES }));
  return parseJson(decode(file.endsWith(".gz") ? unzip(file, bytes) : bytes, file), file);
}

async function readBytes(io: Io, file: string): Promise<Uint8Array> {
  try {
    return await io.readFile(file);
  } catch (error) {
    const why = error instanceof Error && "code" in error ? String(error.code) : String(error);
    throw new InputError(WORDS.t("cli.cannotRead", { file, why }));
  }
}

function unzip(file: string, bytes: Uint8Array): Uint8Array {
  try {
    return gunzipSync(bytes, { maxOutputLength: LIMIT_BYTES });
  } catch (error) {
    if (error instanceof RangeError)
      throw new InputError(WORDS.t("cli.tooLong", { file, limit: LIMIT_BYTES }));
    throw new InputError(
      WORDS.t("cli.notGzip", { file, why: error instanceof Error ? error.message : String(error) }),
    );
  }
}

function decode(bytes: Uint8Array, file: string): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw new InputError(WORDS.t("cli.notUtf8", { file }));
  }
}

/** Parses JSON; the error gives line and column of the first character that cannot be. */
export function parseJson(text: string, file: string): unknown {
  if (text.trim() === "") throw new InputError(WORDS.t("cli.empty", { file }));
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    const before = text.slice(0, faultPosition(text)).split("\n");
    const why =
      error instanceof Error
        ? error.message.replace(/ in JSON at position.*$/, "").replace(/, .*is not valid JSON$/s, "")
        : "";
    const place = { line: before.length, column: before.at(-1)!.length + 1 };
    throw new InputError(WORDS.t("cli.malformed", { file, ...place, why }));
  }
}

/** The shortest start of the text that no ending could make JSON ends just after the fault; found by halving. */
function faultPosition(text: string): number {
  let [good, bad] = [0, text.length + 1];
  while (bad - good > 1) {
    const middle = (good + bad) >> 1;
    if (couldGoOn(text.slice(0, middle))) good = middle;
    else bad = middle;
  }
  return good;
}

function couldGoOn(start: string): boolean {
  try {
    JSON.parse(start);
    return true;
  } catch (error) {
    const message = error instanceof Error ? error.message : "";
    if (/end of JSON input|Unterminated string/.test(message)) return true;
    const at = /at position (\d+)/.exec(message);
    return at !== null && Number(at[1]) >= start.length;
  }
}
