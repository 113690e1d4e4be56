import { AsyncLocalStorage } from "node:async_hooks";
import { join } from "node:path";
import { Kysely, sql } from "kysely";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openSqlite, postgresDialect, postgresPool, sqliteDialect } from "./dialects.ts";
import { Door, type DoorContext } from "./door.ts";
import { SQLITE_FILE } from "./open-database.ts";
import { scopedStore } from "./scoped-store.ts";
import { makeSealer } from "./seal.ts";
import { addDepot, makePlace, type TestPlace, testedStores } from "./stores-for-tests.ts";
import type { Tables } from "./tables.ts";
import type { Store } from "./types.ts";
import { wordsOf } from "./words.ts";

const FIRST = ["Ada", "Bo", "Cleo", "Dan", "Eve", "Finn", "Gwen", "Hal", "Ida", "Jo"];
const HIRES = 10_000;
/** of the first; all others are closed */
const STAGES = ["closed", "booked", "onHire", "closed", "closed", "booked", "onHire"];
const AT_ONCE = 500;
/** far above what it takes (a few milliseconds), far below a walk through every hire with its documents */
const SLOWEST_MS = 250;
const NOW = "2026-07-01T00:00:00.000Z";

/** Written in bulk, as the store itself would have written them one by one. */
async function fill(door: Door, first: number, end: number): Promise<void> {
  for (let start = first; start < end; start += AT_ONCE) {
    const hires = Array.from({ length: AT_ONCE }, (_, k) => {
      const n = start + k;
      const from = Date.UTC(2020, 0, 1) + n * 6 * 3_600_000;
      return {
        id: `hire-${n}`,
        number: `20-${String(n).padStart(5, "0")}`,
        stage: STAGES[n] ?? "closed",
        customer_id: null,
        customer_name: `${FIRST[n % 10]} Invented${n % 500}`,
        vehicle_id: `v${n % 40}`,
        registration: `ZZ${n % 40} INV`,
        from_at: new Date(from).toISOString(),
        to_at: new Date(from + 7 * 86_400_000).toISOString(),
        version: 1,
        created_at: NOW,
        updated_at: NOW,
      };
    });
    await door.insert("hire", hires).execute();
    const words = hires.flatMap((hire) =>
      wordsOf([hire.customer_name, hire.registration, hire.number]).map((word) => ({
        word,
        target_id: hire.id,
      })),
    );
    for (let k = 0; k < words.length; k += AT_ONCE)
      await door.insert("hire_word", words.slice(k, k + AT_ONCE)).execute();
  }
}

describe.each(testedStores())("ten thousand hires on $kind", ({ kind }) => {
  let place: TestPlace;
  let db: Kysely<Tables>;
  let store: Store;

  beforeAll(async () => {
    place = await makePlace(kind);
    const scope = await addDepot(await place.open(), "manager@example.org");
    const inTransaction = new AsyncLocalStorage<true>();
    const context: DoorContext = {
      now: () => NOW,
      inTransaction,
      sealer: makeSealer(Buffer.alloc(32)),
      onErasure: async () => {},
      overwrite: () => {},
    };
    db = new Kysely<Tables>({
      dialect:
        kind === "sqlite"
          ? sqliteDialect(openSqlite(join(place.dataFolder, SQLITE_FILE)), inTransaction)
          : postgresDialect(postgresPool(place.url!), inTransaction),
    });
    const door = new Door(db, scope, context);
    await fill(door, 0, AT_ONCE);
    // a server in use gathers its statistics by itself, within a minute; here there is no minute
    await sql`analyze`.execute(db);
    await door.within((inner) => fill(inner, AT_ONCE, HIRES));
    await sql`analyze`.execute(db);
    store = scopedStore(door);
  }, 120_000);
  afterAll(async () => {
    await db.destroy();
    await place.remove();
  });

  /** The best of five: what the query takes, not what else the machine is doing. */
  async function timed<T>(work: () => Promise<T>): Promise<T> {
    let best = Number.POSITIVE_INFINITY;
    let answer = await work();
    for (let n = 0; n < 5; n++) {
      const start = performance.now();
      answer = await work();
      best = Math.min(best, performance.now() - start);
    }
    expect(best).toBeLessThan(SLOWEST_MS);
    return answer;
  }

  test("are found by name, registration and number at once", async () => {
    const byName = await timed(() => store.hires.search("ada invented"));
    expect(byName.rows).toHaveLength(50);
    expect(byName.rows.every(({ customerName }) => customerName.startsWith("Ada"))).toBe(true);
    expect((await timed(() => store.hires.search("invented123"))).rows).toHaveLength(20);
    expect((await timed(() => store.hires.search("zz7inv eve"))).rows).toEqual([]);
    expect((await timed(() => store.hires.search("zz7 inv hal"))).rows).toHaveLength(50);
    expect((await timed(() => store.hires.search("20-01234"))).rows.map(({ id }) => id)).toEqual([
      "hire-1234",
    ]);
    expect((await timed(() => store.hires.search("nobody"))).rows).toEqual([]);
  });

  test("are found by two words of which one is rare, and by two that many share", async () => {
    const rare = await timed(() => store.hires.search("invented zz7 invented123"));
    expect(rare.rows.map(({ id }) => id)).toEqual([]);
    const both = await timed(() => store.hires.search("zz inv invented127", { limit: 200 }));
    expect(both.rows).toHaveLength(20);
    expect(both.rows.every(({ customerName }) => customerName.endsWith("Invented127"))).toBe(true);
    const shared = await timed(() => store.hires.search("inv zz", { limit: 3 }));
    expect(shared.rows.map(({ id }) => id)).toEqual(["hire-9999", "hire-9998", "hire-9997"]);
    const next = await timed(() => store.hires.search("inv zz", { limit: 3, after: shared.next! }));
    expect(next.rows.map(({ id }) => id)).toEqual(["hire-9996", "hire-9995", "hire-9994"]);
  });

  test("of several stages are listed together by day, page after page", async () => {
    const stages = ["booked", "closed", "onHire"] as const;
    const first = await timed(() => store.hires.list({ stages, limit: 4 }));
    expect(first.rows.map(({ id }) => id)).toEqual(["hire-0", "hire-1", "hire-2", "hire-3"]);
    const second = await timed(() => store.hires.list({ stages, limit: 4, after: first.next! }));
    expect(second.rows.map(({ id, stage }) => [id, stage])).toEqual([
      ["hire-4", "closed"],
      ["hire-5", "booked"],
      ["hire-6", "onHire"],
      ["hire-7", "closed"],
    ]);
    expect((await store.hires.list({ stages: [] })).rows).toEqual([]);
  });

  test("are listed by day, and a late page comes as quickly as the first", async () => {
    const day = await timed(() =>
      store.hires.list({ touchesFrom: "2021-06-01T00:00:00Z", touchesTo: "2021-06-02T00:00:00Z" }),
    );
    expect(day.rows.length).toBeGreaterThan(20);
    const late = await timed(() => store.hires.list({ touchesFrom: "2026-10-01T00:00:00Z", limit: 5 }));
    expect(late.rows).toHaveLength(5);
    expect((await timed(() => store.hires.list({ after: late.next!, limit: 5 }))).rows).toHaveLength(5);
  });
});
