import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type TestPlace, testedStores, twoDepots } from "./stores-for-tests.ts";
import type { Store } from "./types.ts";

describe.each(testedStores())("changes of a hire on $kind", ({ kind }) => {
  let place: TestPlace;
  let store: Store;
  let other: Store;
  beforeAll(async () => {
    ({ place, here: store, there: other } = await twoDepots(kind));
  });
  afterAll(() => place.remove());

  test("are kept in their order, for their own depot only, and emptied with the hirer", async () => {
    const customer = await store.customers.create({ name: "Ada Invented", document: {} });
    const hire = await store.hires.create({
      from: "2026-08-03T13:00:00Z",
      to: "2026-08-10T09:00:00Z",
      customerId: customer.id,
    });
    const add = (kind: string, document: object) =>
      store.changes.add({ hireId: hire.id, kind, document: { ...document }, by: "a" });
    const first = await add("late", { change: { eta: "2026-08-10T12:00" } });
    await add("accident", { change: { what: "A wall" } });
    expect((await store.changes.ofHires([hire.id])).map((row) => row.kind)).toEqual(["late", "accident"]);
    expect(await store.changes.get(first.id)).toEqual(first);
    expect(await store.changes.ofHires([])).toEqual([]);
    expect(await other.changes.ofHires([hire.id])).toEqual([]);
    expect(await other.changes.get(first.id)).toBeNull();
    await store.customers.erase(customer.id, "a");
    expect((await store.changes.ofHires([hire.id])).map(({ document }) => document)).toEqual([{}, {}]);
  });
});
