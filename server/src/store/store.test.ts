import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { inventedFirm, type TestPlace, testedStores, twoDepots } from "./stores-for-tests.ts";
import type { Database, Store } from "./types.ts";

const FROM = "2026-07-04T14:00:00.000Z";
const TO = "2026-07-11T09:00:00.000Z";

describe.each(testedStores())("the store on $kind", ({ kind }) => {
  let place: TestPlace;
  let database: Database;
  let here: Store;
  let there: Store;

  beforeAll(async () => {
    ({ place, database, here, there } = await twoDepots(kind, {
      now: () => new Date("2026-07-01T08:00:00Z"),
    }));
  });
  afterAll(() => place.remove());

  const newHire = (store: Store, extra = {}) => store.hires.create({ from: FROM, to: TO, ...extra });

  test("a firm is made whole or not at all", async () => {
    const before = await database.system.firmCount();
    await expect(database.system.createFirm(inventedFirm("HERE@example.org"))).rejects.toThrow(/login/);
    expect(await database.system.firmCount()).toBe(before);
    expect((await here.terms.on("hire", "2026-06-01"))?.document).toEqual({ excessPence: 100_000 });
    expect((await here.firm.get()).name).toBe("Invented Hire");
  });

  test("a document written from an old version is refused, and says which version is there", async () => {
    const hire = await newHire(here);
    expect(await here.hires.putPart(hire.id, "trip", { stops: [] }, 0, "desk")).toEqual({
      ok: true,
      version: 1,
    });
    expect(await here.hires.putPart(hire.id, "trip", { stops: [1] }, 0, "yard")).toEqual({
      ok: false,
      why: "stale",
      version: 1,
    });
    expect(await here.hires.putPart(hire.id, "trip", { stops: [2] }, 1, "desk")).toEqual({
      ok: true,
      version: 2,
    });
    expect((await here.hires.part(hire.id, "trip"))?.document).toEqual({ stops: [2] });
    expect(await here.hires.putPart("nobody", "trip", {}, 0, "desk")).toEqual({ ok: false, why: "notFound" });
    expect(await here.hires.update(hire.id, { stage: "quote" }, 1)).toEqual({ ok: true, version: 2 });
    expect(await here.hires.update(hire.id, { stage: "lost" }, 1)).toEqual({
      ok: false,
      why: "stale",
      version: 2,
    });
  });

  test("of many who write the same version at once exactly one is kept", async () => {
    const hire = await newHire(here);
    const answers = await Promise.all(
      Array.from({ length: 12 }, (_, n) => here.hires.putPart(hire.id, "load", { n }, 0, "desk")),
    );
    expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
  });

  test("a description is read as it held on the day, and the same again adds nothing", async () => {
    const first = await here.vehicles.put({
      of: "PV2",
      validFrom: "2026-01-01",
      document: { heater: "gas" },
    });
    await here.vehicles.put({ of: "PV2", validFrom: "2026-05-01", document: { heater: "diesel" } });
    expect(
      (await here.vehicles.put({ of: "PV2", validFrom: "2026-01-01", document: { heater: "gas" } }))
        .versionId,
    ).toBe(first.versionId);
    expect((await here.vehicles.on("PV2", "2026-04-30"))?.document).toEqual({ heater: "gas" });
    expect((await here.vehicles.on("PV2", "2026-05-01"))?.document).toEqual({ heater: "diesel" });
    expect(await here.vehicles.on("PV2", "2025-12-31")).toBeNull();
    expect(await here.vehicles.versions("PV2")).toHaveLength(2);
    expect((await here.vehicles.allOn("2026-06-01")).map(({ of }) => of)).toEqual(["PV2"]);
    await expect(here.vehicles.put({ of: "PV2", validFrom: "2026-02-30", document: {} })).rejects.toThrow(
      /validFrom/,
    );
  });

  test("a correction on the same day holds from then on, also back to what it was", async () => {
    for (const heater of ["gas", "diesel", "gas"]) {
      await here.vehicles.put({ of: "PV9", validFrom: "2026-01-01", document: { heater } });
    }
    expect((await here.vehicles.on("PV9", "2026-01-01"))?.document).toEqual({ heater: "gas" });
    expect(await here.vehicles.versions("PV9")).toHaveLength(3);
  });

  test("another depot's rows are never seen nor changed", async () => {
    const customer = await here.customers.create({
      name: "Sam Invented",
      document: { telephone: "07700 900001" },
    });
    const hire = await newHire(here, { customerId: customer.id });
    await here.bookings.book({
      hireId: hire.id,
      vehicleId: "PV2",
      from: FROM,
      to: TO,
      turnaroundMinutes: 120,
    });
    expect(await there.hires.get(hire.id)).toBeNull();
    expect((await there.hires.search("Sam")).rows).toEqual([]);
    expect((await there.customers.search("")).rows).toEqual([]);
    expect(await there.customers.get(customer.id)).toBeNull();
    expect(await there.bookings.between(FROM, TO)).toEqual([]);
    expect(await there.hires.update(hire.id, { stage: "lost" }, 1)).toEqual({ ok: false, why: "notFound" });
    expect(await there.customers.erase(customer.id, "manager")).toBeNull();
    expect(await there.bookings.release(hire.id)).toBe(false);
    await expect(newHire(there, { customerId: customer.id })).rejects.toThrow(/customer of this depot/);
    await expect(
      there.payments.add({
        hireId: hire.id,
        kind: "payment",
        currency: "GBP",
        pence: 1,
        document: {},
        by: "x",
      }),
    ).rejects.toThrow();
    const twin = await newHire(there, { id: hire.id });
    expect(twin.id).toBe(hire.id);
    expect((await here.hires.get(hire.id))?.customerName).toBe("Sam Invented");
    await here.bookings.release(hire.id);
  });

  test("hires are found by name, registration and number, without marks and in any case", async () => {
    const customer = await here.customers.create({ name: "Zoë O'Brien-Łukasik", document: {} });
    const hire = await newHire(here, { customerId: customer.id });
    await here.hires.update(hire.id, { vehicleId: "PV7", registration: "ZZ99 XYZ" }, 1);
    for (const typed of [
      "zoe",
      "o'brien",
      "obrien zo",
      "zz99xyz",
      "ZZ99 X",
      "xyz",
      hire.number,
      hire.number.slice(0, 5),
    ]) {
      expect(
        (await here.hires.search(typed)).rows.map(({ id }) => id),
        typed,
      ).toContain(hire.id);
    }
    expect((await here.hires.search("zoe nobody")).rows).toEqual([]);
    await here.customers.update(customer.id, { name: "Ada Invented", document: {} }, 1);
    expect((await here.hires.search("zoe")).rows).toEqual([]);
    expect((await here.hires.search("ada")).rows[0]?.customerName).toBe("Ada Invented");
    expect((await here.hires.byNumber(hire.number))?.id).toBe(hire.id);
  });

  test("pages follow each other without a gap or a repeat", async () => {
    const made: string[] = [];
    for (let n = 0; n < 7; n++)
      made.push((await newHire(there, { from: "2027-01-01T10:00:00Z", to: "2027-01-02T10:00:00Z" })).id);
    const seen: string[] = [];
    let after: string | null = null;
    do {
      const page = await there.hires.list({
        touchesFrom: "2027-01-01T00:00:00Z",
        limit: 3,
        ...(after === null ? {} : { after }),
      });
      seen.push(...page.rows.map(({ id }) => id));
      after = page.next;
    } while (after !== null);
    expect([...seen].sort()).toEqual([...made].sort());
    expect(new Set(seen).size).toBe(7);
    await expect(there.hires.list({ after: "nonsense" })).rejects.toThrow(/after/);
  });

  test("an unreadable instant, a period back to front and a NUL are named", async () => {
    await expect(here.hires.create({ from: "4 July", to: TO })).rejects.toThrow(/^from: /);
    await expect(here.hires.create({ from: TO, to: FROM })).rejects.toThrow(/^to: /);
    await expect(here.customers.create({ name: "a\0b", document: {} })).rejects.toThrow(/customer\.name/);
    expect((await here.customers.create({ name: "c", document: { odd: "a\0b" } })).document).toEqual({
      odd: "a\0b",
    });
  });

  test("work that fails half way leaves nothing behind", async () => {
    const hire = await newHire(here);
    const work = here.within(async (store) => {
      await store.hires.putPart(hire.id, "quote", { pence: 1 }, 0, "desk");
      await store.payments.add({
        hireId: hire.id,
        kind: "payment",
        currency: "GBP",
        pence: 100,
        document: {},
        by: "desk",
      });
      throw new Error("half way");
    });
    await expect(work).rejects.toThrow("half way");
    expect(await here.hires.part(hire.id, "quote")).toBeNull();
    expect(await here.payments.ofHire(hire.id)).toEqual([]);
  });

  test("the same payment sent again is one payment, and another under its id is refused", async () => {
    const hire = await newHire(here);
    const payment = {
      id: "pay-1",
      hireId: hire.id,
      kind: "depositHeld",
      currency: "GBP",
      pence: 100_000,
      document: {},
      by: "desk",
    } as const;
    const first = await here.payments.add(payment);
    expect(await here.payments.add(payment)).toEqual(first);
    await expect(here.payments.add({ ...payment, pence: 5 })).rejects.toThrow(/^id: /);
    await expect(here.payments.add({ ...payment, id: "pay-2", pence: 0.5 })).rejects.toThrow(/^pence: /);
    expect(await here.payments.ofHire(hire.id)).toEqual([first]);
  });
});
