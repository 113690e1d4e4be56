import { AsyncLocalStorage } from "node:async_hooks";
import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import Sqlite from "better-sqlite3";
import { Kysely } from "kysely";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openSqlite, sqliteDialect } from "./dialects.ts";
import { Door } from "./door.ts";
import { migrate, migrationsFor } from "./migrate.ts";
import { scopedStore } from "./scoped-store.ts";
import { makeSealer } from "./seal.ts";
import { addDepot, inventedFirm, makePlace } from "./stores-for-tests.ts";
import { systemStore } from "./system-store.ts";
import type { Tables } from "./tables.ts";
import type { Store } from "./types.ts";

const serverSource = fileURLToPath(new URL("..", import.meta.url));
const sources = readdirSync(serverSource, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".ts") && !name.endsWith(".test.ts") && !name.endsWith("-for-tests.ts"))
  .map((name) => ({
    name: relative(serverSource, join(serverSource, name)),
    text: readFileSync(join(serverSource, name), "utf8"),
  }));

describe("the one door", () => {
  test("nothing outside store/ speaks to a database", () => {
    const speaking = sources.filter(({ text }) =>
      /from "(kysely|better-sqlite3|pg|pg-pool)"|import\("(kysely|better-sqlite3|pg)"\)/.test(text),
    );
    expect(speaking.length).toBeGreaterThan(3);
    expect(speaking.map(({ name }) => name).filter((name) => !name.startsWith("store/"))).toEqual([]);
  });

  test("in store/ only the door, the system's few queries, the job queue and the migrations hold the database itself", () => {
    const holding = sources
      .filter(
        ({ name, text }) =>
          name.startsWith("store/") && !name.startsWith("store/migrations/") && /Kysely</.test(text),
      )
      .map(({ name }) => name);
    expect(holding.sort()).toEqual([
      "store/door.ts",
      "store/feeds-store.ts",
      "store/jobs-store.ts",
      "store/migrate.ts",
      "store/open-database.ts",
      "store/system-store.ts",
    ]);
  });
});

const GIVEN = {
  of: "x",
  validFrom: "2026-01-01",
  document: {},
  hireId: "x",
  vehicleId: "x",
  name: "x",
  from: "2026-01-01T00:00:00Z",
  to: "2026-01-02T00:00:00Z",
  turnaroundMinutes: 0,
  kind: "x",
  payload: {},
};

/** A refusal, by answer or by error, is as good: only what is asked of the database counts here. */
async function call(method: (...given: unknown[]) => Promise<unknown>, ...given: unknown[]): Promise<void> {
  try {
    await method(...given);
  } catch {
    // refused
  }
}

describe("every statement of a depot's store", () => {
  const statements: { sql: string; parameters: readonly unknown[] }[] = [];
  let db: Kysely<Tables>;
  let store: Store;

  beforeAll(async () => {
    const inTransaction = new AsyncLocalStorage<true>();
    db = new Kysely<Tables>({
      dialect: sqliteDialect(openSqlite(":memory:"), inTransaction),
      log: ({ query }) => {
        statements.push({ sql: query.sql, parameters: query.parameters });
      },
    });
    await migrate(db as Kysely<unknown>, migrationsFor("sqlite"));
    const context = {
      now: () => "2026-07-01T00:00:00.000Z",
      inTransaction,
      sealer: makeSealer(Buffer.alloc(32)),
      onErasure: async () => {},
      overwrite: () => {},
    };
    const { scope } = await systemStore(db, "sqlite", context).createFirm(inventedFirm());
    statements.length = 0;
    store = scopedStore(new Door(db, scope, context));
  });
  afterAll(() => db.destroy());

  test("names the firm and the depot, whatever method is called", async () => {
    const called: string[] = [];
    for (const [group, methods] of Object.entries(store)) {
      if (typeof methods !== "object" || group === "scope") continue;
      for (const [name, method] of Object.entries(
        methods as Record<string, (...given: unknown[]) => Promise<unknown>>,
      )) {
        called.push(`${group}.${name}`);
        // with arguments that mean nothing: most answer null or refuse, and all of them ask
        await call(method, "x", { a: 1 }, 1, "x", "x");
        await call(method, GIVEN, 1);
        await call(method, "x", GIVEN, 1);
        await call(method, ["x"], "x");
      }
    }
    expect(called.length).toBeGreaterThan(50);
    const asked = statements.filter(({ sql }) => !/^(begin|commit|rollback)/.test(sql));
    expect(asked.length).toBeGreaterThan(60);
    for (const { sql, parameters } of asked) {
      const tables = sql.match(/(from|into|update) "/g)!.length;
      if (sql.includes('from "firm"')) continue;
      expect(sql.match(/"firm_id"/g)?.length ?? 0, sql).toBeGreaterThanOrEqual(tables);
      // numbers of invoices run through the firm, not through one depot
      if (sql.includes('"firm_counter"')) continue;
      expect(sql.match(/"depot_id"/g)?.length ?? 0, sql).toBeGreaterThanOrEqual(tables);
      expect(parameters, sql).toContain(store.scope.firmId);
      expect(parameters, sql).toContain(store.scope.depotId);
    }
  });
});

describe("inside a transaction", () => {
  test("whoever uses the outer store is told so at once, instead of waiting for themselves", async () => {
    const place = await makePlace("sqlite");
    const database = await place.open();
    const store = database.storeFor(await addDepot(database, "manager@example.org"));
    await expect(store.within(() => store.depot.get())).rejects.toThrow(/handed in/);
    await expect(store.within(() => database.system.firmCount())).rejects.toThrow(/handed in/);
    expect((await store.within((inner) => inner.depot.get())).name).toBe("Invented Depot");
    expect((await store.depot.get()).name).toBe("Invented Depot");
    await place.remove();
  });
});

test("a committed write is on the disk before it is answered", () => {
  const file = openSqlite(":memory:");
  expect(file).toBeInstanceOf(Sqlite);
  expect(file.pragma("synchronous", { simple: true })).toBe(2);
  expect(file.pragma("foreign_keys", { simple: true })).toBe(1);
  expect(file.pragma("secure_delete", { simple: true })).toBe(1);
  file.close();
});
