import { AsyncLocalStorage } from "node:async_hooks";
import { join } from "node:path";
import { Kysely, type Migration, sql } from "kysely";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openSqlite, postgresDialect, postgresPool, sqliteDialect } from "./dialects.ts";
import { migrate, migrationsFor } from "./migrate.ts";
import { makePlace, type TestPlace, testedStores } from "./stores-for-tests.ts";

describe.each(testedStores())("migrations on $kind", ({ kind }) => {
  let place: TestPlace;
  let db: Kysely<unknown>;

  beforeAll(async () => {
    place = await makePlace(kind);
    const dialect =
      kind === "sqlite"
        ? sqliteDialect(
            openSqlite(join(place.dataFolder, "migrations.sqlite")),
            new AsyncLocalStorage<true>(),
          )
        : postgresDialect(postgresPool(place.url!), new AsyncLocalStorage<true>());
    db = new Kysely<unknown>({ dialect });
  });
  afterAll(async () => {
    await db.destroy();
    await place.remove();
  });

  const shape = async () => {
    const tables = await db.introspection.getTables();
    return tables
      .map(({ name, columns }) => `${name}(${columns.map((column) => column.name).join(" ")})`)
      .sort();
  };
  const good = migrationsFor(kind);
  const second: Migration = { up: (on) => on.schema.createTable("second").addColumn("id", "text").execute() };
  const halfDone: Migration = {
    async up(on) {
      await on.schema.createTable("half").addColumn("id", "text").execute();
      await on.schema.alterTable("hire").addColumn("half_done", "text").execute();
      await sql`insert into half (id) values ('x')`.execute(on);
      throw new Error("failed half way");
    },
  };

  test("the tables are made once; a second start changes nothing", async () => {
    expect(await migrate(db, good)).toEqual(Object.keys(good));
    const before = await shape();
    expect(before.length).toBeGreaterThan(20);
    expect(await migrate(db, good)).toEqual([]);
    expect(await shape()).toEqual(before);
  });

  test("a migration that fails leaves nothing behind, nor does the one before it in the batch, and mended it runs", async () => {
    const before = await shape();
    await expect(migrate(db, { ...good, "9002-second": second, "9003-half": halfDone })).rejects.toThrow(
      "failed half way",
    );
    expect(await shape()).toEqual(before);
    const mended: Migration = { up: (on) => on.schema.createTable("half").addColumn("id", "text").execute() };
    expect(await migrate(db, { ...good, "9002-second": second, "9003-half": mended })).toEqual([
      "9002-second",
      "9003-half",
    ]);
  });

  test("every table of a depot carries firm and depot, and neither may be empty", async () => {
    const tables = await db.introspection.getTables();
    const above = ["firm", "firm_counter", "setup_link", "second", "half"];
    for (const table of tables.filter(({ name }) => !above.includes(name))) {
      for (const name of ["firm_id", "depot_id"]) {
        expect(
          table.columns.find((column) => column.name === name)?.isNullable,
          `${table.name}.${name}`,
        ).toBe(false);
      }
    }
  });
});
