/** For tests only: all that two stores hold, whichever database they are in, and where they differ. */
import { createHash } from "node:crypto";
import { readdir, readFile } from "node:fs/promises";
import { join, relative } from "node:path";
import SqliteDatabase from "better-sqlite3";
import pg from "pg";
import { SQLITE_FILE } from "./open-database.ts";

/** Rows of each table as text, in one order; photographs by their path as if they were a table. */
export type Held = ReadonlyMap<string, readonly string[]>;

const asText = (row: Readonly<Record<string, unknown>>): string =>
  JSON.stringify(Object.entries(row).sort(([a], [b]) => (a < b ? -1 : 1)));

export function rowsOfSqlite(folder: string): Held {
  const file = new SqliteDatabase(join(folder, SQLITE_FILE), { readonly: true });
  try {
    const tables = file
      .prepare(
        "select name from sqlite_master where type = 'table' and name not like 'sqlite_%' and name not like 'kysely_%' order by name",
      )
      .pluck()
      .all() as string[];
    const rows = (name: string) =>
      (file.prepare(`select * from "${name}"`).all() as Record<string, unknown>[]).map(asText).sort();
    return new Map(tables.map((name) => [name, rows(name)]));
  } finally {
    file.close();
  }
}

export async function rowsOfPostgres(url: string): Promise<Held> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    const tables = await client.query<{ name: string }>(
      "select table_name as name from information_schema.tables where table_schema = 'public' and table_name not like 'kysely_%' order by table_name",
    );
    const held = new Map<string, readonly string[]>();
    for (const { name } of tables.rows) {
      const { rows } = await client.query<Record<string, unknown>>(`select * from "${name}"`);
      // whole numbers of eight bytes come as text
      const plain = rows.map((row) =>
        Object.fromEntries(Object.entries(row).map(([k, v]) => [k, number(v)])),
      );
      held.set(name, plain.map(asText).sort());
    }
    return held;
  } finally {
    await client.end();
  }
}
const number = (value: unknown): unknown =>
  typeof value === "string" && /^-?\d{1,15}$/.test(value) ? Number(value) : value;

/** Whole numbers that are kept as text look like numbers on one side only: both are read alike. */
export const alike = (held: Held): Held =>
  new Map([...held].map(([name, rows]) => [name, rows.map((row) => asText(looseRow(row))).sort()]));
const looseRow = (row: string) =>
  Object.fromEntries((JSON.parse(row) as [string, unknown][]).map(([name, value]) => [name, number(value)]));

export async function photographsIn(folder: string): Promise<Held> {
  const root = join(folder, "photographs");
  const entries = await readdir(root, { recursive: true, withFileTypes: true });
  // smaller pictures are made on first use, and are no part of a backup
  const originals = entries.filter((entry) => entry.isFile() && /^[0-9a-f]{64}\.jpg$/.test(entry.name));
  const lines = await Promise.all(
    originals.map(async (entry) => {
      const path = join(entry.parentPath, entry.name);
      const sha256 = createHash("sha256")
        .update(await readFile(path))
        .digest("hex");
      return `${relative(root, path)} ${sha256}`;
    }),
  );
  return new Map([["photographs", lines.sort()]]);
}

/** One line for each table that is not the same, with a row that only one of them has; tables named in `but` are left out. */
export function differences(before: Held, after: Held, but: readonly string[] = []): readonly string[] {
  const names = [...new Set([...before.keys(), ...after.keys()])].filter((name) => !but.includes(name));
  return names.flatMap((name) => {
    const [old, now] = [before.get(name) ?? [], after.get(name) ?? []];
    if (old.join("\n") === now.join("\n")) return [];
    const only = old.find((row) => !now.includes(row)) ?? now.find((row) => !old.includes(row)) ?? "";
    return [`${name}: ${old.length} rows, then ${now.length}; such as ${only.slice(0, 300)}`];
  });
}
