import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type TestPlace, testedStores, twoDepots } from "./stores-for-tests.ts";
import type { Store } from "./types.ts";

describe.each(testedStores())("a depot's changes to the rules on $kind", ({ kind }) => {
  let place: TestPlace;
  let here: Store;
  let there: Store;
  beforeAll(async () => {
    ({ place, here, there } = await twoDepots(kind));
  });
  afterAll(() => place.remove());

  test("they come back in the order in which they were made, to their own depot only", async () => {
    const ruleId = "seats.gb.childRestraint.belowCm";
    const first = await here.rules.add({
      ruleId,
      kind: "confirm",
      document: { readOn: "2026-06-01" },
      by: "a",
    });
    const second = await here.rules.add({
      ruleId,
      kind: "correct",
      document: { rule: { id: ruleId } },
      by: "a",
    });
    expect(await here.rules.all()).toEqual([first, second]);
    expect(await there.rules.all()).toEqual([]);
  });

  test("a sealed check code can be erased at once, and only once", async () => {
    const hire = await here.hires.create({ from: "2026-07-04T14:00:00Z", to: "2026-07-11T09:00:00Z" });
    const eraseAt = "2026-07-22T00:00:00.000Z";
    await here.licences.put({ hireId: hire.id, driverId: "d1/code", number: "INVENTED", eraseAt });
    expect(await there.licences.erase(hire.id, "d1/code")).toBe(false);
    expect(await here.licences.read(hire.id, "d1/code", "a")).toBe("INVENTED");
    expect(await here.licences.erase(hire.id, "d1/code")).toBe(true);
    expect(await here.licences.erase(hire.id, "d1/code")).toBe(false);
    expect(await here.licences.read(hire.id, "d1/code", "a")).toBeNull();
  });
});
