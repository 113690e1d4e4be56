import type { AsyncLocalStorage } from "node:async_hooks";
import { setTimeout as sleep } from "node:timers/promises";
import SqliteDatabase from "better-sqlite3";
import {
  CompiledQuery,
  type DatabaseConnection,
  type Dialect,
  PostgresDialect,
  PostgresDriver,
  SqliteAdapter,
  SqliteDialect,
  SqliteDriver,
} from "kysely";
import pg from "pg";
import { breathe } from "../threads/breathe.ts";

export type StoreKind = "sqlite" | "postgres";

/** SQLite rolls back changes of the schema as well; Kysely does not use that, so a failed migration would leave half of itself behind. */
class TransactionalSqliteAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true;
  }
}

/** Set while the work of a transaction runs, and seen by everything that it calls. */
export type InTransaction = AsyncLocalStorage<true>;

/**
 * Whoever asks for a second connection from inside a transaction would wait for themselves (SQLite) or read past
 * their own transaction (PostgreSQL): a mistake that must be loud.
 */
function refuseSecond(inTransaction: InTransaction): void {
  if (inTransaction.getStore() === true) {
    throw new Error("inside `within` use only the store that is handed in");
  }
}

const BUSY_WAIT_MS = 15_000;

/** Takes the write lock at the start of a transaction, so that what it read is still so when it writes. */
class ImmediateSqliteDriver extends SqliteDriver {
  readonly #inTransaction: InTransaction;

  constructor(database: SqliteDatabase.Database, inTransaction: InTransaction) {
    super({ database });
    this.#inTransaction = inTransaction;
  }

  override async acquireConnection(): Promise<DatabaseConnection> {
    refuseSecond(this.#inTransaction);
    await breathe();
    return super.acquireConnection();
  }

  override async beginTransaction(connection: DatabaseConnection): Promise<void> {
    for (let waited = 0; ; ) {
      try {
        await connection.executeQuery(CompiledQuery.raw("begin immediate"));
        return;
      } catch (error) {
        if (!isBusy(error) || waited >= BUSY_WAIT_MS) throw error;
        const pause = 2 + Math.random() * 20;
        waited += pause;
        await sleep(pause);
      }
    }
  }
}

function isBusy(error: unknown): boolean {
  return error instanceof SqliteDatabase.SqliteError && error.code.startsWith("SQLITE_BUSY");
}

/** Opens the file with WAL and full synchronisation: what is committed survives a power cut, as far as the disk obeys. */
export function openSqlite(path: string): SqliteDatabase.Database {
  const file = new SqliteDatabase(path);
  file.pragma("busy_timeout = 200");
  file.pragma("journal_mode = WAL");
  file.pragma("synchronous = FULL");
  file.pragma("foreign_keys = ON");
  // what is erased is overwritten, not only let go
  file.pragma("secure_delete = ON");
  return file;
}

export function sqliteDialect(database: SqliteDatabase.Database, inTransaction: InTransaction): Dialect {
  const dialect = new SqliteDialect({ database });
  return {
    createAdapter: () => new TransactionalSqliteAdapter(),
    createDriver: () => new ImmediateSqliteDriver(database, inTransaction),
    createIntrospector: (db) => dialect.createIntrospector(db),
    createQueryCompiler: () => dialect.createQueryCompiler(),
  };
}

const INT8 = 20;

/** Whole numbers come as numbers on both stores; one beyond 2^53 is an error, not a rounded value. */
function parseInt8(text: string): number {
  const value = Number(text);
  if (!Number.isSafeInteger(value))
    throw new RangeError(`int8 ${text} is beyond what a number holds exactly`);
  return value;
}

export function postgresPool(url: string): pg.Pool {
  const pool = new pg.Pool({
    connectionString: url,
    max: 10,
    types: {
      getTypeParser: (oid: number, format?: "text" | "binary") =>
        oid === INT8 && format !== "binary" ? parseInt8 : pg.types.getTypeParser(oid, format),
    },
  });
  // an idle connection that breaks is dropped by the pool; whoever asks next gets a new one or the error
  pool.on("error", () => {});
  return pool;
}

class GuardedPostgresDriver extends PostgresDriver {
  readonly #inTransaction: InTransaction;

  constructor(pool: pg.Pool, inTransaction: InTransaction) {
    super({ pool });
    this.#inTransaction = inTransaction;
  }

  override async acquireConnection(): ReturnType<PostgresDriver["acquireConnection"]> {
    refuseSecond(this.#inTransaction);
    return super.acquireConnection();
  }
}

export function postgresDialect(pool: pg.Pool, inTransaction: InTransaction): Dialect {
  const dialect = new PostgresDialect({ pool });
  return {
    createAdapter: () => dialect.createAdapter(),
    createDriver: () => new GuardedPostgresDriver(pool, inTransaction),
    createIntrospector: (db) => dialect.createIntrospector(db),
    createQueryCompiler: () => dialect.createQueryCompiler(),
  };
}

/** A transaction that lost a race and may be run again: serialisation failure, deadlock, locked file. */
export function mayRetry(error: unknown): boolean {
  if (isBusy(error)) return true;
  return error instanceof pg.DatabaseError && (error.code === "40001" || error.code === "40P01");
}
