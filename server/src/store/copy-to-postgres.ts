import type SqliteDatabase from "better-sqlite3";
import pg from "pg";
import { openSqlite } from "./dialects.ts";

interface Table {
  readonly name: string;
  readonly columns: readonly string[];
}

/** Parameters of one statement; PostgreSQL takes at most 65,535. */
const PARAMETERS = 20_000;

/**
 * Copies every row of the embedded database into PostgreSQL with the same, empty tables, in one transaction, while
 * nobody can write to the first.
 * @throws where a row cannot be written; nothing of the copy stays
 */
export async function copyToPostgres(
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
