import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { ERASURES_FILE } from "./open-database.ts";
import { addDepot, makePlace, type TestPlace, testedStores } from "./stores-for-tests.ts";
import type { Database, Store } from "./types.ts";

describe.each(testedStores())("an erasure in work that fails, on $kind", ({ kind }) => {
  let place: TestPlace;
  let database: Database;
  let store: Store;
  beforeAll(async () => {
    place = await makePlace(kind);
    database = await place.open();
    store = database.storeFor(await addDepot(database, "manager@example.org"));
  });
  afterAll(() => place.remove());
  const listed = () => {
    const path = join(place.dataFolder, ERASURES_FILE);
    return existsSync(path) ? readFileSync(path, "utf8") : "";
  };

  test("is on no list, so that no restore erases what was never erased; one that stands is on the list once", async () => {
    const { id } = await store.customers.create({ name: "Robin Invented", document: {} });
    const work = store.within(async (inner) => {
      await inner.customers.erase(id, "manager");
      throw new Error("half way");
    });
    await expect(work).rejects.toThrow("half way");
    expect((await store.customers.get(id))?.name).toBe("Robin Invented");
    expect(listed()).not.toContain(id);
    await store.within((inner) => inner.customers.erase(id, "manager"));
    await store.customers.erase(id, "manager");
    expect((await store.customers.get(id))?.name).toBe("");
    expect(listed().split(id)).toHaveLength(2);
  });
});
