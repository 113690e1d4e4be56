import { appendFile, readFile, rename, writeFile } from "node:fs/promises";
import type { Erasure } from "./types.ts";

const lineOf = (erasure: Erasure): string => `${JSON.stringify(erasure)}\n`;
const keyOf = ({ firmId, depotId, kind, targetId }: Erasure): string =>
  JSON.stringify([firmId, depotId, kind, targetId]);

/** Appends one to the list beside the database; it is on the disk when this ends. */
export const appendErasure = (path: string, erasure: Erasure): Promise<void> =>
  appendFile(path, lineOf(erasure), { mode: 0o600, flush: true });

async function linesIn(path: string): Promise<readonly string[]> {
  const text = await readFile(path, "utf8").catch((error: NodeJS.ErrnoException) => {
    if (error.code === "ENOENT") return "";
    throw error;
  });
  return text.split("\n").filter((line) => line.trim() !== "");
}

function read(line: string): unknown {
  try {
    return JSON.parse(line) as unknown;
  } catch {
    return null; // half a line
  }
}

const KINDS: ReadonlySet<unknown> = new Set<Erasure["kind"]>(["record", "customer", "licence", "photograph"]);

function isErasure(value: unknown): value is Erasure {
  if (typeof value !== "object" || value === null) return false;
  const { firmId, depotId, kind, targetId, at } = value as Partial<Record<keyof Erasure, unknown>>;
  return KINDS.has(kind) && [firmId, depotId, targetId, at].every((each) => typeof each === "string");
}

/**
 * Brings the list beside the database up to what the database holds: a process that was ended between the two leaves
 * a line out, or half of one, and another process may have erased into a folder of its own. What the list holds more
 * stays. Nothing is written where nothing is missing.
 * @returns what the list holds more: the database is an older copy, and these are to be erased in it again
 */
export async function completeErasures(
  path: string,
  erasures: readonly Erasure[],
): Promise<readonly Erasure[]> {
  const listed = (await linesIn(path)).map(read);
  const whole = listed.filter(isErasure);
  const known = new Set(whole.map(keyOf));
  const missing = erasures.filter((erasure) => !known.has(keyOf(erasure)));
  if (listed.includes(null)) await rewrite(path, [...listed.filter((each) => each !== null), ...missing]);
  else if (missing.length > 0)
    await appendFile(path, missing.map(lineOf).join(""), { mode: 0o600, flush: true });
  const held = new Set(erasures.map(keyOf));
  return whole.filter((erasure) => !held.has(keyOf(erasure)));
}

async function rewrite(path: string, lines: readonly unknown[]): Promise<void> {
  const part = `${path}.part`;
  await writeFile(part, lines.map((line) => `${JSON.stringify(line)}\n`).join(""), {
    mode: 0o600,
    flush: true,
  });
  await rename(part, path);
}
