import { readFile, rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { verifyRecords } from "@setfair/records";
import { pathOfOriginal, scopeOfPath } from "../files/names.ts";
import { openFiles } from "../files/open-files.ts";
import { putWhole } from "../files/put-whole.ts";
import type { BucketAccess } from "../files/read-bucket-access.ts";
import { makeFolder } from "../make-folder.ts";
import { openDatabase, SQLITE_FILE } from "../store/open-database.ts";
import type { Erasure } from "../store/types.ts";
import { copyHashed, hashOf, isFree, isThere } from "./files.ts";
import { type ListedFile, MANIFEST_FILE, manifestSchema } from "./types.ts";

export interface RestoredDepot {
  readonly name: string;
  /** records whose hash was computed again and agreed */
  readonly checked: number;
  readonly ok: boolean;
  readonly head: string | null;
}
export type RestoreAnswer =
  | {
      readonly ok: true;
      readonly made: string;
      readonly files: number;
      readonly depots: readonly RestoredDepot[];
      /** erasures that were applied again */
      readonly erased: number;
      /** photographs of the backup that were removed since, or before: not put back */
      readonly leftOut: number;
    }
  | {
      readonly ok: false;
      /** changed: files are not what the list says · noKey: neither given nor let go · broken: its records do not hold */
      readonly why: "noManifest" | "notEmpty" | "changed" | "noKey" | "broken";
      readonly paths: readonly string[];
    };

export interface RestoreOptions {
  readonly from: string;
  /** not there yet, or empty */
  readonly dataFolder: string;
  /** what was erased since the backup was made, from the list that is kept apart */
  readonly erasures: readonly Erasure[];
  /** text of the key file, or SETFAIR_KEY */
  readonly key: string | undefined;
  /** what is sealed may stay sealed for ever */
  readonly withoutKey: boolean;
  /** photographs go into a store; into the data folder where left out */
  readonly bucket?: BucketAccess | null;
}

const no = (why: Extract<RestoreAnswer, { ok: false }>["why"], paths: readonly string[]): RestoreAnswer => ({
  ok: false,
  why,
  paths,
});

/**
 * Puts a backup back as a data folder: every file is checked before it is copied, what was erased since is erased
 * again, every chain of records is walked, and photographs that were removed are not put back. The folder appears whole
 * under its name or not at all; with a store of photographs these are put there first, each under its hash, and stay
 * there whatever comes after.
 * @throws where the disk fails, the key is no key, or the database cannot be opened
 */
export async function restoreBackup(options: RestoreOptions): Promise<RestoreAnswer> {
  const { from, dataFolder, key, withoutKey } = options;
  const manifest = await readManifest(from);
  if (manifest === null) return no("noManifest", [join(from, MANIFEST_FILE)]);
  if (!(await isFree(dataFolder))) return no("notEmpty", [dataFolder]);
  if (key === undefined && !withoutKey) return no("noKey", []);
  const changed = await changedFiles(from, manifest.files);
  if (changed.length > 0) return no("changed", changed);
  const part = `${dataFolder.replace(/[\\/]+$/, "")}.part`;
  await rm(part, { recursive: true, force: true });
  await makeFolder(part);
  try {
    await copyHashed(join(from, SQLITE_FILE), join(part, SQLITE_FILE));
    if (key !== undefined) await writeFile(join(part, "setfair.key"), `${key.trim()}\n`, { mode: 0o600 });
    const { depots, erased, removed } = await checkStore(part, options.erasures);
    const broken = depots.filter(({ ok }) => !ok).map(({ name }) => name);
    if (broken.length > 0) {
      await rm(part, { recursive: true, force: true });
      return no("broken", broken);
    }
    const { refused, leftOut } = await copyPhotographs(options, manifest.files, { part, removed });
    if (refused.length > 0) {
      await rm(part, { recursive: true, force: true });
      return no("changed", refused);
    }
    await rm(dataFolder, { recursive: true, force: true });
    await rename(part, dataFolder);
    return { ok: true, made: manifest.made, files: manifest.files.length - leftOut, depots, erased, leftOut };
  } catch (error) {
    await rm(part, { recursive: true, force: true });
    throw error;
  }
}

/** Without those that were removed; `refused` are those that the store did not take: what their names say they are not. */
async function copyPhotographs(
  { from, dataFolder, bucket = null }: RestoreOptions,
  listed: readonly ListedFile[],
  { part, removed }: { readonly part: string; readonly removed: ReadonlySet<string> },
): Promise<{ readonly refused: readonly string[]; readonly leftOut: number }> {
  const store = bucket === null ? null : openFiles({ dataFolder, bucket });
  const refused: string[] = [];
  let leftOut = 0;
  for (const { path } of listed) {
    const named = scopeOfPath(path.replace(/^photographs\//, ""));
    if (named === null) continue;
    if (removed.has(path)) leftOut += 1;
    else if (store === null) await copyHashed(join(from, path), join(part, path));
    else if (!(await putWhole(store, named, join(from, path)))) refused.push(path);
  }
  return { refused, leftOut };
}

async function readManifest(from: string) {
  const path = join(from, MANIFEST_FILE);
  if (!(await isThere(path))) return null;
  const parsed = manifestSchema.safeParse(JSON.parse(await readFile(path, "utf8")));
  return parsed.success ? parsed.data : null;
}

async function changedFiles(from: string, files: readonly ListedFile[]): Promise<readonly string[]> {
  const changed: string[] = [];
  for (const { path, sha256 } of files) {
    const at = join(from, path);
    if (!(await isThere(at)) || (await hashOf(at)) !== sha256) changed.push(path);
  }
  return changed;
}

/** Opens the copy as the server would, erases again what was erased, and walks every chain. */
async function checkStore(folder: string, erasures: readonly Erasure[]) {
  const database = await openDatabase({ dataFolder: folder });
  try {
    const erased = await database.system.applyErasures(erasures);
    const depots: RestoredDepot[] = [];
    const removed = new Set<string>();
    for (const { id, firmId, name } of await database.system.depots()) {
      const scope = { firmId, depotId: id };
      const store = database.storeFor(scope);
      const { ok, checked, head } = verifyRecords(await store.records.export());
      depots.push({ name, ok, checked, head });
      for (const sha256 of await store.photographs.removed())
        removed.add(`photographs/${pathOfOriginal(scope, sha256)}`);
    }
    return { depots, erased, removed };
  } finally {
    await database.close();
  }
}
