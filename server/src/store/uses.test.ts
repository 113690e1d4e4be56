import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { addDepot, makePlace, type TestPlace, testedStores } from "./stores-for-tests.ts";
import type { Store } from "./types.ts";

describe.each(testedStores())("use of hires that are over, on $kind", ({ kind }) => {
  let place: TestPlace;
  let here: Store;
  let there: Store;
  beforeAll(async () => {
    place = await makePlace(kind);
    const database = await place.open({ now: () => new Date("2026-07-01T08:00:00Z") });
    here = database.storeFor(await addDepot(database, "here@example.org"));
    there = database.storeFor(await addDepot(database, "there@example.org"));
  });
  afterAll(() => place.remove());
  const returned = (hireId: string | null, returnedAt: string, document: object = { used: 1 }) =>
    here.uses.put({ vehicleId: "pv2", hireId, returnedAt, document: { ...document } });

  test("what is written of the same hire again takes the place of the former and is compared anew", async () => {
    const { id } = await returned("h1", "2026-06-20T10:00:00Z");
    await here.uses.setOutcome(id, { comparisons: [] }, "e1");
    expect((await here.uses.ofHire("h1"))?.outcome).toEqual({ comparisons: [] });
    expect(await returned("h1", "2026-06-20T10:00:00Z", { used: 2 })).toEqual({ id });
    expect(await here.uses.ofHire("h1")).toMatchObject({ document: { used: 2 }, outcome: null });
  });

  test("waits oldest first until this engine has compared it, and again after another one has", async () => {
    const old = await returned(null, "2025-06-01T10:00:00Z");
    const waiting = await here.uses.waiting("e1", 10);
    expect(waiting.map(({ hireId }) => hireId)).toEqual([null, "h1"]);
    for (const { id } of waiting) await here.uses.setOutcome(id, { n: 1 }, "e1");
    expect(await here.uses.waiting("e1", 10)).toEqual([]);
    expect((await here.uses.waiting("e2", 1)).map(({ id }) => id)).toEqual([old.id]);
    expect((await here.uses.outcomes("e1")).map(({ outcome }) => outcome)).toEqual([{ n: 1 }, { n: 1 }]);
    expect(await here.uses.outcomes("e2")).toEqual([]);
    expect(await there.uses.outcomes("e1")).toEqual([]);
  });

  test("keeps the rates of one depot, all at once", async () => {
    await here.uses.putRates([
      { vehicleId: "*", document: { lpg: 1.1 } },
      { vehicleId: "pv2", document: { lpg: 1.2 } },
    ]);
    await here.uses.putRates([{ vehicleId: "pv2", document: { lpg: 1.3 } }]);
    expect(await here.uses.rates()).toEqual([
      { vehicleId: "pv2", document: { lpg: 1.3 }, at: "2026-07-01T08:00:00.000Z" },
    ]);
    expect(await there.uses.rates()).toEqual([]);
  });

  test("empties what was written about a hirer who is erased, and keeps what was found", async () => {
    const customer = await here.customers.create({ name: "Somebody", document: {} });
    const hire = await here.hires.create({
      from: "2026-06-01T10:00:00Z",
      to: "2026-06-05T10:00:00Z",
      customerId: customer.id,
    });
    const { id } = await returned(hire.id, "2026-06-05T10:00:00Z", { party: "theirs" });
    await here.uses.setOutcome(id, { n: 2 }, "e1");
    await here.customers.erase(customer.id, "desk");
    expect(await here.uses.ofHire(hire.id)).toMatchObject({ document: {}, outcome: { n: 2 } });
    expect((await here.uses.waiting("e9", 10)).map((row) => row.hireId)).not.toContain(hire.id);
    // it cannot be compared anew: what an earlier engine found goes on teaching
    expect((await here.uses.outcomes("e9")).map((row) => row.id)).toEqual([id]);
  });
});
