import { join } from "node:path";
import { verifyRecords } from "@setfair/records";
import { copyToPostgres } from "../store/copy-to-postgres.ts";
import { openDatabase, SQLITE_FILE } from "../store/open-database.ts";
import type { Database } from "../store/types.ts";
import { isThere } from "./files.ts";

export type MoveAnswer =
  | {
      readonly ok: true;
      readonly tables: number;
      readonly rows: number;
      readonly depots: readonly {
        readonly name: string;
        readonly checked: number;
        readonly head: string | null;
      }[];
    }
  | { readonly ok: false; readonly why: "noData" | "notEmpty" | "broken"; readonly path: string };

/**
 * Copies everything from the embedded database into an empty PostgreSQL database, all or nothing, while nobody can
 * write to the first; then walks every chain of records there. The first stays as it is; photographs and key stay in
 * the data folder.
 * @param options.key SETFAIR_KEY where given
 * @throws where a database cannot be reached or a row cannot be written; nothing of the copy stays
 */
export async function moveToPostgres(options: {
  readonly dataFolder: string;
  readonly url: string;
  readonly key?: string;
}): Promise<MoveAnswer> {
  const { dataFolder, url } = options;
  const path = join(dataFolder, SQLITE_FILE);
  if (!(await isThere(path))) return { ok: false, why: "noData", path };
  const key = options.key === undefined ? {} : { key: options.key };
  // both with the same tables first
  await (await openDatabase({ dataFolder, ...key })).close();
  const target = await openDatabase({ dataFolder, url, ...key });
  try {
    if ((await target.system.firmCount()) > 0) return { ok: false, why: "notEmpty", path: "" };
    const copied = await copyToPostgres(path, url);
    const depots = await walk(target);
    const broken = depots.find(({ ok }) => !ok);
    if (broken !== undefined) return { ok: false, why: "broken", path: broken.name };
    return { ok: true, ...copied, depots: depots.map(({ ok: _ok, ...depot }) => depot) };
  } finally {
    await target.close();
  }
}

async function walk(database: Database) {
  const depots: { name: string; ok: boolean; checked: number; head: string | null }[] = [];
  for (const { id, firmId, name } of await database.system.depots()) {
    const all = await database.storeFor({ firmId, depotId: id }).records.export();
    const { ok, checked, head } = verifyRecords(all);
    depots.push({ name, ok, checked, head });
  }
  return depots;
}
