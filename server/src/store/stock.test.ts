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
    const other = await store.stock.addItem({ ...seat, name: "Seat 2" });
    expect(await store.stock.changeItem(item.id, { ...seat, name: "Seat 1a" }, 1)).toBe(true);
    expect(await store.stock.changeItem(item.id, { ...seat, name: "Seat 1b" }, 1)).toBe(false);
    expect(await store.stock.items()).toMatchObject([
      { name: "Seat 1a", version: 2, expiresOn: "2030-01-31" },
      { id: other.id, name: "Seat 2", version: 1 },
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

  test("of one thing that two hires want, each keeps its own; an empty period is refused", async () => {
    const [one, other] = [await newHire(), await newHire()];
    const seats = [{ itemId: "shared", count: 1 }];
    await store.stock.replaceHolds(other, { from: hour(60), to: hour(70) }, seats);
    await store.stock.replaceHolds(one, { from: hour(50), to: hour(60) }, seats);
    expect(await store.stock.moveHold({ hireId: one, from: "shared", to: "instead" })).toBe(true);
    expect(await store.stock.holdsOf([other])).toMatchObject([{ itemId: "shared" }]);
    const held = await store.stock.holdsBetween(hour(50), hour(70));
    expect(held.map(({ hireId, itemId }) => [hireId, itemId])).toEqual([
      [one, "instead"],
      [other, "shared"],
    ]);
    const nothing = { from: hour(50), to: hour(50) };
    await expect(store.stock.replaceHolds(one, nothing, seats)).rejects.toThrow(/^to: /);
    expect(await store.stock.holdsOf([one])).toHaveLength(1);
  });

  test("what comes back early is free from then on; what has not begun is no early return", async () => {
    const [now, hire] = [Date.now(), await newHire()];
    const at = (hours: number) => new Date(now + hours * 3_600_000).toISOString();
    await store.stock.replaceHolds(hire, { from: at(-2), to: at(5) }, [{ itemId: "early", count: 1 }]);
    const [hold] = await store.stock.holdsOf([hire]);
    expect(await store.stock.endHold(hold!.id)).toBe(true);
    expect(await store.stock.holdsBetween(at(1), at(4))).toEqual([]);
    await store.stock.replaceHolds(hire, { from: at(2), to: at(5) }, [{ itemId: "late", count: 1 }]);
    const [later] = await store.stock.holdsOf([hire]);
    expect(await store.stock.endHold(later!.id)).toBe(false);
    expect(await store.stock.holdsBetween(at(3), at(4))).toHaveLength(1);
  });
});
