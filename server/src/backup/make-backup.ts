import { rename, rm, stat, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { pathOfOriginal } from "../files/names.ts";
import { openFiles } from "../files/open-files.ts";
import type { BucketAccess } from "../files/read-bucket-access.ts";
import type { PhotographFiles } from "../files/types.ts";
import { makeFolder } from "../make-folder.ts";
import { copySqlite } from "../store/copy-sqlite.ts";
import { SQLITE_FILE } from "../store/open-database.ts";
import type { Scope } from "../store/types.ts";
import { hashOf, isFree, isThere, writeHashed } from "./files.ts";
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
 * Copies the embedded database while it is in use (SQLite's online backup), then every photograph, from the data
 * folder or from the store in which photographs are kept, into a folder that appears whole under its name or not at all. Neither the key nor the list of erasures goes with it: both are kept apart.
 * @param into a folder that is not there yet, or is empty
 * @throws where the disk fails or is full, or the store does not answer; nothing of a backup that broke off stays
 */
export async function makeBackup(options: {
  readonly dataFolder: string;
  readonly into: string;
  readonly now: Date;
  /** photographs in a store; in the data folder where left out */
  readonly bucket?: BucketAccess | null;
}): Promise<BackupAnswer> {
  const { dataFolder, into, now, bucket = null } = options;
  const database = join(dataFolder, SQLITE_FILE);
  if (!(await isThere(database))) return { ok: false, why: "noData", path: database };
  if (!(await isFree(into))) return { ok: false, why: "notEmpty", path: into };
  const part = `${into.replace(/[\\/]+$/, "")}.part`;
  await rm(part, { recursive: true, force: true });
  await makeFolder(part);
  try {
    const files = [await copyDatabase(database, part)];
    const damaged: string[] = [];
    // after the database, so that no photograph that it names is missing
    const kept = openFiles({ dataFolder, bucket });
    for await (const photograph of kept.each()) {
      const copied = await copyPhotograph(kept, photograph, part);
      if (typeof copied === "string") damaged.push(copied);
      else if (copied !== null) files.push(copied);
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

/** Null where it was removed meanwhile; its path where its bytes are not what its name says. */
async function copyPhotograph(
  kept: PhotographFiles,
  { scope, sha256 }: { readonly scope: Scope; readonly sha256: string },
  part: string,
): Promise<ListedFile | string | null> {
  const found = await kept.open(scope, sha256, "original");
  if (found === null) return null;
  const path = `photographs/${pathOfOriginal(scope, sha256)}`;
  const to = join(part, path);
  const copied = await writeHashed(found.stream, to);
  if (copied.sha256 === sha256) return { path, ...copied };
  await rm(to, { force: true });
  return path;
}
