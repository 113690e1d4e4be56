/** For tests only: a store of an older version whose process is ended while its tables are brought up to date. */
import { cp, mkdir, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import SqliteDatabase from "better-sqlite3";
import { Kysely, SqliteDialect } from "kysely";
import { type Killable, startKillable } from "../disaster/killable-for-tests.ts";
import { makeRandom } from "../disaster/random-for-tests.ts";
import { MORNING, mustBe } from "../disaster/served-life-for-tests.ts";
import { openSqlite } from "./dialects.ts";
import { migrate, migrationsFor } from "./migrate.ts";
import { SQLITE_FILE } from "./open-database.ts";

/** So many that an index over them takes a moment. */
const RECORDS = 60_000;

export interface MigrationFigures {
  readonly kills: number;
  /** found as it was before, and as it is to be */
  readonly old: number;
  readonly done: number;
}

/** @throws where anything of a migration is half done, or a row is lost */
export async function killMigrations(kills: number, seed: number): Promise<MigrationFigures> {
  const folder = await mkdtemp(join(tmpdir(), "setfair-migration-"));
  const random = makeRandom(seed);
  let old = 0;
  try {
    await makeOld(join(folder, "old"));
    const whole = await openingMs(join(folder, "old"), join(folder, "first"));
    for (let n = 0; n < kills; n++) {
      const trial = join(folder, String(n));
      await cp(join(folder, "old"), trial, { recursive: true });
      const child = open(trial);
      await child.opening();
      // beyond the end too, so that both sides of it are met
      await sleep(random() * whole * 1.5);
      await child.kill();
      const found = look(trial);
      mustBe("all migrations or none", found === "old" || found === "done", found);
      if (found === "old") old += 1;
      const again = open(trial);
      await again.url();
      await again.kill();
      mustBe("it is brought up to date the next time", look(trial) === "done");
      await rm(trial, { recursive: true, force: true });
    }
    return { kills, old, done: kills - old };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

const open = (dataDir: string): Killable => startKillable({ dataDir, at: MORNING, onlyOpens: true });

/** How long it takes where nobody ends it, milliseconds. */
async function openingMs(from: string, trial: string): Promise<number> {
  await cp(from, trial, { recursive: true });
  const child = open(trial);
  await child.opening();
  const begun = performance.now();
  await child.url();
  const took = performance.now() - begun;
  await child.kill();
  return took;
}

/** A store with the first migration only, and many records. */
async function makeOld(folder: string): Promise<void> {
  await mkdir(folder);
  const file = openSqlite(join(folder, SQLITE_FILE));
  const db = new Kysely<unknown>({ dialect: new SqliteDialect({ database: file }) });
  const [[name, first]] = Object.entries(migrationsFor("sqlite")) as [[string, never]];
  await migrate(db, { [name]: first });
  const own = { firm_id: "f", depot_id: "d" };
  const at = MORNING;
  put(file, "firm", { firm_id: "f", name: "Invented Hire", document: "{}", created_at: at });
  put(file, "depot", { ...own, name: "Depot", time_zone: "Europe/London", document: "{}", version: 1 });
  file.exec("begin");
  for (let seq = 1; seq <= RECORDS; seq++) {
    const place = { device_id: "t", chain: "c", seq, kind: "note", receipt_seq: seq };
    put(file, "record", { ...own, id: `r${seq}`, hash: `h${seq}`, ...place, body: "{}" });
  }
  file.exec("commit");
  await db.destroy();
}

function put(file: SqliteDatabase.Database, table: string, row: Readonly<Record<string, string | number>>) {
  const names = Object.keys(row);
  file
    .prepare(`insert into "${table}" (${names.join(", ")}) values (${names.map(() => "?").join(", ")})`)
    .run(...Object.values(row));
}

/** As it was, as it is to be, or what is wrong. */
function look(folder: string): string {
  const file = new SqliteDatabase(join(folder, SQLITE_FILE));
  try {
    const one = (statement: string) => Number(file.prepare(statement).pluck().get());
    const sound = file.pragma("integrity_check", { simple: true });
    if (sound !== "ok") return `unsound: ${String(sound)}`;
    const rows = one("select count(*) from record");
    if (rows !== RECORDS) return `${rows} records`;
    const applied = one("select count(*) from kysely_migration");
    const tables = one("select count(*) from sqlite_master where name in ('invoice', 'use_return')");
    if (applied === 1 && tables === 0) return "old";
    const all = Object.keys(migrationsFor("sqlite")).length;
    return applied === all && tables === 2 ? "done" : `${applied} of ${all} migrations, ${tables} tables`;
  } finally {
    file.close();
  }
}
