import { mkdir, rename, rm, stat, writeFile } from "node:fs/promises";
import { basename, join, relative, sep } from "node:path";
import { copySqlite } from "../store/copy-sqlite.ts";
import { SQLITE_FILE } from "../store/open-database.ts";
import { copyHashed, hashOf, isFree, isThere, originalsIn } from "./files.ts";
import { type ListedFile, MANIFEST_FILE, type Manifest } from "./types.ts";

export type BackupAnswer =
  | {
      readonly ok: boolean;
      readonly files: number;
      readonly bytes: number;
      readonly photographs: number;
      /** photographs whose bytes are no longer what their name says; they are left out */
      readonly damaged: readonly string[];
    }
  | { readonly ok: false; readonly why: "noData" | "notEmpty"; readonly path: string };

/**
 * Copies the embedded database while it is in use (SQLite's online backup), then every photograph, into a folder that
 * appears whole under its name or not at all. Neither the key nor the list of erasures goes with it: both are kept apart.
 * @param into a folder that is not there yet, or is empty
 * @throws where the disk fails or is full; nothing of a backup that broke off stays
 */
export async function makeBackup(options: {
  readonly dataFolder: string;
  readonly into: string;
  readonly now: Date;
}): Promise<BackupAnswer> {
  const { dataFolder, into, now } = options;
  const database = join(dataFolder, SQLITE_FILE);
  if (!(await isThere(database))) return { ok: false, why: "noData", path: database };
  if (!(await isFree(into))) return { ok: false, why: "notEmpty", path: into };
  const part = `${into.replace(/[\\/]+$/, "")}.part`;
  await rm(part, { recursive: true, force: true });
  await mkdir(part, { recursive: true, mode: 0o700 });
  try {
    const files = [await copyDatabase(database, part)];
    const damaged: string[] = [];
    // after the database, so that no photograph that it names is missing
    for (const from of await originalsIn(join(dataFolder, "photographs"))) {
      const copied = await copyPhotograph(from, dataFolder, part);
      if (copied === null) damaged.push(from);
      else files.push(copied);
    }
    const manifest: Manifest = { format: 1, made: now.toISOString(), files };
    await writeFile(join(part, MANIFEST_FILE), `${JSON.stringify(manifest, null, 1)}\n`, {
      mode: 0o600,
      flush: true,
    });
    await rm(into, { recursive: true, force: true });
    await rename(part, into);
    const bytes = files.reduce((sum, file) => sum + file.bytes, 0);
    return { ok: damaged.length === 0, files: files.length, bytes, photographs: files.length - 1, damaged };
  } catch (error) {
    await rm(part, { recursive: true, force: true });
    throw error;
  }
}

async function copyDatabase(database: string, part: string): Promise<ListedFile> {
  const to = join(part, SQLITE_FILE);
  await copySqlite(database, to);
  return { path: SQLITE_FILE, sha256: await hashOf(to), bytes: (await stat(to)).size };
}

/** Null where its bytes are not what its name says. */
async function copyPhotograph(from: string, dataFolder: string, part: string): Promise<ListedFile | null> {
  const path = relative(dataFolder, from).split(sep).join("/");
  const to = join(part, path);
  const copied = await copyHashed(from, to);
  if (`${copied.sha256}.jpg` === basename(from)) return { path, ...copied };
  await rm(to, { force: true });
  return null;
}
