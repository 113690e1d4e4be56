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

function read(line: string): Erasure | null {
  try {
    return JSON.parse(line) as Erasure;
  } catch {
    return null;
  }
}

/**
 * Brings the list beside the database up to what the database holds: a process that was ended between the two leaves
 * a line out, or half of one, and another process may have erased into a folder of its own. What the list holds more
 * stays. Nothing is written where nothing is missing.
 */
export async function completeErasures(path: string, erasures: readonly Erasure[]): Promise<void> {
  if (erasures.length === 0) return;
  const listed = (await linesIn(path)).map(read);
  const whole = listed.filter((each): each is Erasure => each !== null);
  const known = new Set(whole.map(keyOf));
  const missing = erasures.filter((erasure) => !known.has(keyOf(erasure)));
  if (whole.length === listed.length) {
    if (missing.length > 0)
      await appendFile(path, missing.map(lineOf).join(""), { mode: 0o600, flush: true });
    return;
  }
  const part = `${path}.part`;
  await writeFile(part, [...whole, ...missing].map(lineOf).join(""), { mode: 0o600, flush: true });
  await rename(part, path);
}
