import { join } from "node:path";
import { verifyRecords } from "@setfair/records";
import type SqliteDatabase from "better-sqlite3";
import pg from "pg";
import { openSqlite } from "../store/dialects.ts";
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

interface Table {
  readonly name: string;
  readonly columns: readonly string[];
}

/** Parameters of one statement; PostgreSQL takes at most 65,535. */
const PARAMETERS = 20_000;

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
    const copied = await copyAll(path, url);
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

async function copyAll(
  path: string,
  url: string,
): Promise<{ readonly tables: number; readonly rows: number }> {
  const source = openSqlite(path);
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    // the write lock: what is copied is one state, and a server that still runs waits
    source.exec("begin immediate");
    await client.query("begin");
    const tables = tablesOf(source);
    let rows = 0;
    for (const table of tables) rows += await copyTable(source, client, table);
    await client.query("commit");
    return { tables: tables.length, rows };
  } catch (error) {
    await client.query("rollback").catch(() => undefined);
    throw error;
  } finally {
    if (source.inTransaction) source.exec("rollback");
    source.close();
    await client.end();
  }
}

/** Every table of ours, those first that others refer to. */
function tablesOf(source: SqliteDatabase.Database): readonly Table[] {
  const names = (
    source
      .prepare(
        "select name from sqlite_master where type = 'table' and name not like 'sqlite_%' order by name",
      )
      .all() as { name: string }[]
  )
    .map(({ name }) => name)
    .filter((name) => !name.startsWith("kysely_"));
  const refs = new Map(
    names.map((name) => [
      name,
      (source.pragma(`foreign_key_list("${name}")`) as { table: string }[]).map(({ table }) => table),
    ]),
  );
  const ordered: string[] = [];
  const visit = (name: string): void => {
    if (ordered.includes(name)) return;
    for (const other of refs.get(name) ?? []) if (other !== name) visit(other);
    ordered.push(name);
  };
  for (const name of names) visit(name);
  return ordered.map((name) => ({
    name,
    columns: (source.pragma(`table_info("${name}")`) as { name: string }[]).map((column) => column.name),
  }));
}

/** In the order in which the rows were written, so that one that refers to another of its table comes after it. */
async function copyTable(source: SqliteDatabase.Database, client: pg.Client, table: Table): Promise<number> {
  const { name, columns } = table;
  const list = columns.map((column) => `"${column}"`).join(", ");
  const batch = Math.max(1, Math.floor(PARAMETERS / columns.length));
  const read = source.prepare(`select ${list} from "${name}"`).raw();
  let rows: unknown[][] = [];
  let count = 0;
  const write = async () => {
    if (rows.length === 0) return;
    const holders = rows.map(
      (_, row) => `(${columns.map((__, k) => `$${row * columns.length + k + 1}`).join(", ")})`,
    );
    await client.query(`insert into "${name}" (${list}) values ${holders.join(", ")}`, rows.flat());
    count += rows.length;
    rows = [];
  };
  for (const row of read.iterate() as IterableIterator<unknown[]>) {
    rows.push(row);
    if (rows.length >= batch) await write();
  }
  await write();
  return count;
}
