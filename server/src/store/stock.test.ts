import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { addDepot, makePlace, type TestPlace, testedStores } from "./stores-for-tests.ts";
import type { Store } from "./types.ts";

const hour = (n: number) => new Date(Date.UTC(2026, 6, 1) + n * 3_600_000).toISOString();
const seat = {
  kind: "childRestraint",
  name: "Seat 1",
  size: "group 1",
  count: 1,
  expiresOn: "2030-01-31",
  retiredOn: null,
  document: {},
};

describe.each(testedStores())("things that travel on $kind", ({ kind }) => {
  let place: TestPlace;
  let store: Store;

  beforeAll(async () => {
    place = await makePlace(kind);
    const database = await place.open();
    store = database.storeFor(await addDepot(database, "manager@example.org"));
  });
  afterAll(() => place.remove());
  const newHire = async () => (await store.hires.create({ from: hour(0), to: hour(1) })).id;

  test("are added, changed by one person at a time, and keep their history", async () => {
    const item = await store.stock.addItem(seat);
    expect(await store.stock.changeItem(item.id, { ...seat, name: "Seat 1a" }, 1)).toBe(true);
    expect(await store.stock.changeItem(item.id, { ...seat, name: "Seat 1b" }, 1)).toBe(false);
    expect(await store.stock.items()).toMatchObject([
      { name: "Seat 1a", version: 2, expiresOn: "2030-01-31" },
    ]);
    await store.stock.addEvent({ itemId: item.id, act: "changed", document: { name: "Seat 1a" }, by: "a" });
    expect(await store.stock.events(item.id)).toMatchObject([{ act: "changed", by: "a" }]);
    await expect(store.stock.addItem({ ...seat, count: 0 })).rejects.toThrow(/^count: /);
    await expect(store.stock.addItem({ ...seat, expiresOn: "soon" })).rejects.toThrow(/^expiresOn: /);
  });

  test("what stays on the same thing stays packed when a hire takes other things", async () => {
    const hire = await newHire();
    const period = { from: hour(10), to: hour(20) };
    await store.stock.replaceHolds(hire, period, [{ itemId: "a", count: 1 }]);
    const [hold] = await store.stock.holdsOf([hire]);
    expect(await store.stock.setPacked(hold!.id, true)).toBe(true);
    expect(await store.stock.moveHold({ hireId: hire, from: "a", to: "c" })).toBe(false);
    await store.stock.replaceHolds(hire, { ...period, to: hour(30) }, [
      { itemId: "a", count: 1 },
      { itemId: "b", count: 2 },
    ]);
    const after = await store.stock.holdsOf([hire]);
    expect(after.map(({ itemId, packedAt }) => [itemId, packedAt !== null])).toEqual([
      ["a", true],
      ["b", false],
    ]);
    expect(await store.stock.moveHold({ hireId: hire, from: "b", to: "c" })).toBe(true);
    expect(await store.stock.holdsBetween(hour(29), hour(40))).toHaveLength(2);
    expect(await store.stock.holdsBetween(hour(30), hour(40))).toEqual([]);
    await store.stock.release(hire);
    expect(await store.stock.holdsOf([hire])).toEqual([]);
  });
});
