import { AsyncLocalStorage } from "node:async_hooks";
import { join } from "node:path";
import { Kysely } from "kysely";
import { describe, expect, it } from "vitest";
import { openSqlite, postgresDialect, postgresPool, sqliteDialect } from "../dialects.ts";
import { migrate, migrationsFor } from "../migrate.ts";
import { makePlace, testedStores } from "../stores-for-tests.ts";

interface Tables {
  firm: { firm_id: string; name: string; document: string; created_at: string };
  depot: {
    firm_id: string;
    depot_id: string;
    name: string;
    time_zone: string;
    document: string;
    version: number;
  };
}

describe.each(testedStores())("opening hours on $kind", ({ kind }) => {
  it("a depot of before has its one pair of hours on all seven days, and everything else as it was", async () => {
    const place = await makePlace(kind);
    const dialect =
      kind === "sqlite"
        ? sqliteDialect(openSqlite(join(place.dataFolder, "old.sqlite")), new AsyncLocalStorage<true>())
        : postgresDialect(postgresPool(place.url!), new AsyncLocalStorage<true>());
    const db = new Kysely<Tables>({ dialect });
    try {
      const all = migrationsFor(kind);
      const before = Object.fromEntries(Object.entries(all).filter(([name]) => name < "0040"));
      const plain = db as unknown as Kysely<unknown>; // the migrator knows no tables
      await migrate(plain, before);
      await db
        .insertInto("firm")
        .values({ firm_id: "f", name: "F", document: "{}", created_at: "" })
        .execute();
      const depot = (id: string, document: object) =>
        db
          .insertInto("depot")
          .values({
            firm_id: "f",
            depot_id: id,
            name: id,
            time_zone: "Europe/London",
            document: JSON.stringify(document),
            version: 3,
          })
          .execute();
      const rest = { telephone: "01632 960000", turnaroundMinutes: 240, schoolHolidays: [] };
      await depot("old", { ...rest, opens: "08:00", closes: "17:30" });
      await depot("bare", { telephone: "01632 960001" });
      await migrate(plain, all);
      const rows = await db.selectFrom("depot").select(["depot_id", "document", "version"]).execute();
      const [old, bare] = ["old", "bare"].map((id) => rows.find(({ depot_id }) => depot_id === id));
      const kept = JSON.parse(old?.document ?? "");
      const hours = { opens: "08:00", closes: "17:30" };
      expect(Object.values(kept.hours.week)).toEqual(Array.from({ length: 7 }, () => hours));
      expect(kept).toMatchObject({ ...rest, hours: { closed: [] } });
      expect(kept.opens ?? kept.closes).toBeUndefined();
      expect(Number(old?.version)).toBe(3);
      expect(JSON.parse(bare?.document ?? "")).toEqual({ telephone: "01632 960001" });
    } finally {
      await db.destroy();
      await place.remove();
    }
  });
});
