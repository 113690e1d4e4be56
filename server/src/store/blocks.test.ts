import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { addDepot, makePlace, type TestPlace, testedStores } from "./stores-for-tests.ts";
import type { Store } from "./types.ts";

const hour = (n: number) => new Date(Date.UTC(2026, 6, 1) + n * 3_600_000).toISOString();

describe.each(testedStores())("periods off the road on $kind", ({ kind }) => {
  let place: TestPlace;
  let store: Store;

  beforeAll(async () => {
    place = await makePlace(kind);
    const database = await place.open();
    store = database.storeFor(await addDepot(database, "manager@example.org"));
  });
  afterAll(() => place.remove());

  const newHire = async () => (await store.hires.create({ from: hour(0), to: hour(1) })).id;
  const book = async (from: number, to: number, vehicleId: string, turnaroundMinutes = 120) => {
    const hireId = await newHire();
    return {
      hireId,
      answer: await store.bookings.book({
        hireId,
        vehicleId,
        from: hour(from),
        to: hour(to),
        turnaroundMinutes,
      }),
    };
  };
  const block = (from: number, to: number, vehicleId: string) =>
    store.blocks.add({ vehicleId, kind: "mot", note: "", from: hour(from), to: hour(to), by: "a" });

  test("hold a vehicle against a hire until they are over, without a turnaround of their own", async () => {
    const added = await block(10, 20, "a");
    expect(added).toMatchObject({ ok: true, block: { kind: "mot", from: hour(10) } });
    expect((await book(5, 11, "a")).answer).toMatchObject({
      ok: false,
      why: "taken",
      by: [],
      blocks: [{ vehicleId: "a" }],
    });
    expect((await book(5, 10, "a")).answer).toEqual({ ok: true });
    expect((await book(20, 30, "a")).answer).toEqual({ ok: true });
    expect((await book(10, 20, "other")).answer).toEqual({ ok: true });
    expect(await store.blocks.between(hour(0), hour(100), ["a"])).toHaveLength(1);
    expect(await store.blocks.between(hour(20), hour(100))).toEqual([]);
    expect(await store.blocks.between(hour(0), hour(10))).toEqual([]);
    if (added.ok) expect(await store.blocks.remove(added.block.id)).toMatchObject({ vehicleId: "a" });
    expect(await store.blocks.remove("nobody")).toBeNull();
    expect((await book(12, 18, "a")).answer).toEqual({ ok: true });
  });

  test("are refused while a hire has the vehicle, and may begin as soon as it is back", async () => {
    const { hireId } = await book(10, 20, "b");
    expect(await block(19, 22, "b")).toMatchObject({ ok: false, why: "taken", by: [{ hireId }] });
    expect(await block(20, 22, "b")).toMatchObject({ ok: true });
    expect(await block(21, 23, "b")).toMatchObject({ ok: false, blocks: [{ from: hour(20) }] });
    await expect(block(30, 30, "b")).rejects.toThrow(/^to: /);
  });

  test("of a hire and a workshop that want one vehicle at once, one has it", async () => {
    for (let n = 0; n < 6; n++) {
      const [hire, workshop] = await Promise.all([book(10, 20, `race${n}`), block(15, 25, `race${n}`)]);
      expect(Number(hire.answer.ok) + Number(workshop.ok)).toBe(1);
    }
  });
});

describe.each(testedStores())("lists of hires on $kind", ({ kind }) => {
  let place: TestPlace;
  let store: Store;

  beforeAll(async () => {
    place = await makePlace(kind);
    const database = await place.open();
    store = database.storeFor(await addDepot(database, "manager@example.org"));
  });
  afterAll(() => place.remove());

  test("a hire is found by the telephone, also after the number changed, and not once the person is erased", async () => {
    const { id } = await store.customers.create({
      name: "Ada Invented",
      document: { telephone: "01632 960123" },
    });
    await store.hires.create({ from: hour(0), to: hour(1), customerId: id });
    const found = async (typed: string) => (await store.hires.search(typed)).rows.length;
    expect(await found("01632 960123")).toBe(1);
    expect(await found("01632960")).toBe(1);
    await store.customers.update(id, { name: "Ada Invented", document: { telephone: "07700 900555" } }, 1);
    expect(await found("01632960123")).toBe(0);
    expect(await found("900555")).toBe(1);
    await store.customers.erase(id, "a");
    expect(await found("900555")).toBe(0);
  });

  test("newest first or soonest first, of some stages, with more of them than one page holds", async () => {
    for (let n = 0; n < 7; n++)
      await store.hires.create({
        from: hour(100 + n),
        to: hour(200),
        stage: n % 2 === 0 ? "booked" : "lost",
      });
    const newest = await store.hires.list({ stages: ["booked", "lost"], order: "newest", limit: 3 });
    expect(newest.rows.map(({ from }) => from)).toEqual([hour(106), hour(105), hour(104)]);
    const next = await store.hires.list({
      stages: ["booked", "lost"],
      order: "newest",
      limit: 3,
      after: newest.next!,
    });
    expect(next.rows.map(({ from }) => from)).toEqual([hour(103), hour(102), hour(101)]);
    expect(await store.hires.all({ stages: ["booked"], startsFrom: hour(102) })).toHaveLength(3);
    expect(await store.hires.counts(["booked", "lost", "closed"])).toEqual({ booked: 4, lost: 3 });
    expect((await store.hires.search("26", { stages: ["lost"] })).rows).toHaveLength(3);
    expect((await store.hires.search("26", { stages: [] })).rows).toEqual([]);
  });

  test("the documents of many hires come at once, by hire, and only those asked for", async () => {
    const ids = [];
    for (let n = 0; n < 3; n++) {
      const { id } = await store.hires.create({ from: hour(0), to: hour(1) });
      await store.hires.putPart(id, "party", { n }, 0, "a");
      await store.hires.putPart(id, "load", { n }, 0, "a");
      ids.push(id);
    }
    const some = await store.hires.partsOf(ids.slice(0, 2), ["party"]);
    expect([...some.keys()].sort()).toEqual(ids.slice(0, 2).sort());
    expect(Object.keys(some.get(ids[0]!) ?? {})).toEqual(["party"]);
    expect(await store.hires.partsOf([])).toEqual(new Map());
  });
});
