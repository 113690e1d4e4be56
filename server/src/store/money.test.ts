import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { addDepot, makePlace, type TestPlace, testedStores } from "./stores-for-tests.ts";
import type { Database, Store } from "./types.ts";

describe.each(testedStores())("invoices and the ledger on $kind", ({ kind }) => {
  let place: TestPlace;
  let database: Database;
  let store: Store;
  let hireId = "";

  beforeAll(async () => {
    place = await makePlace(kind);
    database = await place.open();
    store = database.storeFor(await addDepot(database, `${randomUUID()}@example.org`));
    hireId = (await store.hires.create({ from: "2026-07-04T14:00:00Z", to: "2026-07-11T09:00:00Z" })).id;
  });
  afterAll(() => place.remove());

  const issue = (into: Store, series: "invoice" | "creditNote" = "invoice") =>
    into.invoices.issue({ hireId, series, on: "2026-07-01", document: { lines: [] }, by: "desk" });

  test("numbers run without a hole however many are issued at once and however many fail", async () => {
    const tries = Array.from({ length: 24 }, (_, n) =>
      store
        .within(async (inner) => {
          const made = await issue(inner);
          if (n % 3 === 0) throw new Error("refused after its number was taken");
          return made.number;
        })
        .catch((error: Error) => error.message),
    );
    const numbers = (await Promise.all(tries)).filter((each) => typeof each === "number");
    expect(numbers.sort((a, b) => a - b)).toEqual(Array.from({ length: 16 }, (_, k) => k + 1));
    expect((await issue(store, "creditNote")).number).toBe(1);
    expect((await issue(store)).number).toBe(17);
    const kept = await store.invoices.between("2026-07-01", "2026-07-01");
    expect(kept).toHaveLength(18);
    expect(await store.invoices.get(kept[0]!.id)).toEqual(kept[0]);
    expect(await store.invoices.ofHires([hireId])).toHaveLength(18);
  });

  test("another firm begins at 1 and sees none of these", async () => {
    const other = database.storeFor(await addDepot(database, `${randomUUID()}@example.org`));
    const hire = await other.hires.create({ from: "2026-07-04T14:00:00Z", to: "2026-07-11T09:00:00Z" });
    const made = await other.invoices.issue({
      hireId: hire.id,
      series: "invoice",
      on: "2026-07-02",
      document: {},
      by: "desk",
    });
    expect(made.number).toBe(1);
    expect(await other.invoices.between("2026-01-01", "2026-12-31")).toEqual([made]);
  });

  test("an entry keeps its day and what it rests on; without a day it has that of its entering", async () => {
    const add = (document: { on?: string }, of?: string) =>
      store.payments.add({
        hireId,
        kind: "payment",
        currency: "GBP",
        pence: 100,
        document,
        by: "desk",
        ...(of === undefined ? {} : { of }),
      });
    const first = await add({ on: "2026-06-30" });
    expect(first).toMatchObject({ on: "2026-06-30", of: null });
    const second = await add({}, first.id);
    expect(second.on).toBe(second.at.slice(0, 10));
    expect(second.of).toBe(first.id);
    expect(await store.payments.between("2026-06-30", "2026-06-30")).toEqual([first]);
    await expect(add({ on: "2026-02-30" })).rejects.toThrow(/on/);
  });
});
