import { AsyncLocalStorage } from "node:async_hooks";
import { join } from "node:path";
import { Kysely } from "kysely";
import { makeFolder } from "../make-folder.ts";
import { openSqlite, postgresDialect, postgresPool, sqliteDialect } from "./dialects.ts";
import { Door, type DoorContext } from "./door.ts";
import { appendErasure, completeErasures } from "./erasure-list.ts";
import { loadKey } from "./key.ts";
import { migrate, migrationsFor } from "./migrate.ts";
import { scopedStore } from "./scoped-store.ts";
import { makeSealer } from "./seal.ts";
import { systemStore } from "./system-store.ts";
import type { Tables } from "./tables.ts";
import type { Database, OpenOptions } from "./types.ts";

/** File names in the data folder. */
export const SQLITE_FILE = "setfair.sqlite";
export const ERASURES_FILE = "erasures.jsonl";

/**
 * Opens the store, makes the data folder where there is none and brings the tables up to date. SQLite in the data
 * folder, or PostgreSQL where `url` is given. Erasures are also written to `erasures.jsonl` (ids only), which is brought
 * up to what the database holds; what it holds more is erased again, since the database is then an older copy. Keep it apart from the backups, for a restore has to apply it again.
 * @throws where the database cannot be opened or a migration fails; nothing of a failed migration stays behind
 */
export async function openDatabase(options: OpenOptions): Promise<Database> {
  const { dataFolder, url, now = () => new Date() } = options;
  await makeFolder(dataFolder);
  const context: DoorContext = {
    now: () => now().toISOString(),
    inTransaction: new AsyncLocalStorage<true>(),
    sealer: makeSealer(loadKey(dataFolder, options.key)),
    onErasure: (erasure) => appendErasure(join(dataFolder, ERASURES_FILE), erasure),
    overwrite: () => undefined,
  };
  const database = await (url === undefined || url === ""
    ? openOnSqlite(dataFolder, context)
    : openOnPostgres(url, context));
  try {
    const { system } = database;
    const again = await completeErasures(join(dataFolder, ERASURES_FILE), await system.erasures());
    await system.applyErasures(again);
  } catch (error) {
    await database.close();
    throw error;
  }
  return database;
}

async function openOnSqlite(dataFolder: string, given: DoorContext): Promise<Database> {
  const file = openSqlite(join(dataFolder, SQLITE_FILE));
  // older states of a page stand in the log until it is written anew
  const context = { ...given, overwrite: () => void file.pragma("wal_checkpoint(TRUNCATE)") };
  const db = new Kysely<Tables>({ dialect: sqliteDialect(file, context.inTransaction) });
  return finish(db, "sqlite", context, async (path) => {
    await file.backup(path);
  });
}

async function openOnPostgres(url: string, context: DoorContext): Promise<Database> {
  const db = new Kysely<Tables>({ dialect: postgresDialect(postgresPool(url), context.inTransaction) });
  return finish(db, "postgres", context, async () => {
    throw new Error("backupTo copies the embedded database only; for PostgreSQL use pg_dump");
  });
}

async function finish(
  db: Kysely<Tables>,
  kind: Database["kind"],
  context: DoorContext,
  backupTo: Database["backupTo"],
): Promise<Database> {
  try {
    await migrate(db as Kysely<unknown>, migrationsFor(kind));
  } catch (error) {
    await db.destroy();
    throw error;
  }
  return {
    kind,
    storeFor: (scope) => scopedStore(new Door(db, scope, context)),
    system: systemStore(db, kind, context),
    backupTo,
    close: () => db.destroy(),
  };
}
