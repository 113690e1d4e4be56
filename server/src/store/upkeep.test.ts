import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type TestPlace, testedStores, twoDepots } from "./stores-for-tests.ts";
import type { Store } from "./types.ts";

describe.each(testedStores())("upkeep on $kind", ({ kind }) => {
  let place: TestPlace;
  let store: Store;
  let other: Store;
  beforeAll(async () => {
    ({ place, here: store, there: other } = await twoDepots(kind));
  });
  afterAll(() => place.remove());

  test("what was done is kept in the order of its days, and only for its own depot", async () => {
    const add = (on: string) =>
      store.upkeep.add({ vehicleId: "v", kind: "done", on, document: { duty: "mot" }, by: "a" });
    await add("2027-05-01");
    await add("2026-05-01");
    expect((await store.upkeep.ofVehicles(["v"])).map(({ on }) => on)).toEqual(["2026-05-01", "2027-05-01"]);
    expect(await store.upkeep.ofVehicles([])).toEqual([]);
    expect(await other.upkeep.ofVehicles(["v"])).toEqual([]);
    await expect(add("2027-02-30")).rejects.toThrow(/on/);
  });

  test("a defect is closed once, by whom and how", async () => {
    const document = { what: "Blind torn", where: "rear" };
    const { id } = await store.defects.add({
      vehicleId: "v",
      hireId: null,
      class: "comfort",
      document,
      by: "a",
    });
    expect(await store.defects.close(id, { by: "b", how: "new blind" })).toBe(true);
    expect(await store.defects.close(id, { by: "c", how: "again" })).toBe(false);
    expect(await other.defects.close(id, { by: "c", how: "again" })).toBe(false);
    expect(await store.defects.ofVehicles(["v"])).toMatchObject([
      { id, closed: { by: "b", how: "new blind" } },
    ]);
  });

  test("who was told of a defect is kept by hire", async () => {
    const told = { defectId: "d", hireId: "h", signer: "Ada Invented", by: "a" };
    await store.defects.disclose(told);
    expect(await store.defects.disclosures(["h"])).toMatchObject([told]);
    expect(await store.defects.disclosures(["other"])).toEqual([]);
  });
});
