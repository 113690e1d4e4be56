import { type ParseArgsConfig, parseArgs } from "node:util";
import type { Io } from "./io.ts";
import { UsageError } from "./usage-error.ts";
import { WORDS } from "./words.ts";

/** 0 done · 1 an honest no · 2 input that cannot be used */
export type ExitCode = 0 | 1 | 2;

export interface Call {
  readonly io: Io;
  readonly flags: Readonly<Record<string, string | boolean | undefined>>;
  readonly positionals: readonly string[];
}

export interface Verb {
  readonly options: NonNullable<ParseArgsConfig["options"]>;
  readonly maxPositionals: number;
  readonly run: (call: Call) => Promise<ExitCode>;
}

/** Reads flags and arguments of a verb; an unknown flag or an argument too many is a UsageError. */
export function readCall(verb: Verb, args: readonly string[], io: Io): Call {
  const parsed = parse(verb, args);
  const extra = parsed.positionals.slice(verb.maxPositionals);
  if (extra.length > 0)
    throw new UsageError(WORDS.t("cli.tooMany", { count: extra.length, extra: extra[0]! }));
  return { io, flags: parsed.values as Call["flags"], positionals: parsed.positionals };
}

function parse(verb: Verb, args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], options: verb.options, allowPositionals: true, strict: true });
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    throw new UsageError(error.message);
  }
}

/** A whole number of a flag; undefined where it was not given. */
export function wholeFlag(call: Call, flag: string): number | undefined {
  const value = call.flags[flag];
  if (value === undefined) return undefined;
  if (typeof value === "string" && /^\d{1,15}$/.test(value)) return Number(value);
  throw new UsageError(WORDS.t("cli.wholeNumber", { flag, value: String(value) }));
}

/** Seconds of a flag, above 0; `otherwise` where it was not given. */
export function secondsFlag(call: Call, flag: string, otherwise: number): number {
  const value = call.flags[flag];
  if (value === undefined) return otherwise;
  if (typeof value === "string" && /^\d{1,6}(\.\d+)?$/.test(value) && Number(value) > 0) return Number(value);
  throw new UsageError(WORDS.t("cli.seconds", { flag, value: String(value) }));
}
