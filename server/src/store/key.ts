import { randomBytes } from "node:crypto";
import { linkSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const KEY_BYTES = 32;

function parseKey(text: string, from: string): Buffer {
  const trimmed = text.trim();
  const key = /^[0-9a-f]{64}$/i.test(trimmed) ? Buffer.from(trimmed, "hex") : Buffer.from(trimmed, "base64");
  if (key.length !== KEY_BYTES) throw new Error(`${from}: expected 32 bytes in hex or base64`);
  return key;
}

/**
 * The key for what is encrypted at rest: SETFAIR_KEY where given, else `setfair.key` in the data folder, made on
 * first use and readable by its owner only. Without it what is sealed stays sealed: back it up apart from the data.
 */
export function loadKey(dataFolder: string, given: string | undefined): Buffer {
  if (given !== undefined && given !== "") return parseKey(given, "SETFAIR_KEY");
  const path = join(dataFolder, "setfair.key");
  makeKeyFile(path);
  if (process.platform !== "win32" && (statSync(path).mode & 0o077) !== 0) {
    throw new Error(`${path}: expected to be readable by its owner only (chmod 600)`);
  }
  return parseKey(readFileSync(path, "utf8"), path);
}

/** Whole or not at all, and never over one that is there, also when two start at once. */
function makeKeyFile(path: string): void {
  const fresh = `${path}.${randomBytes(6).toString("hex")}`;
  try {
    statSync(path);
    return;
  } catch {
    writeFileSync(fresh, `${randomBytes(KEY_BYTES).toString("hex")}\n`, {
      mode: 0o600,
      flag: "wx",
      flush: true,
    });
  }
  try {
    linkSync(fresh, path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
  } finally {
    rmSync(fresh, { force: true });
  }
}
