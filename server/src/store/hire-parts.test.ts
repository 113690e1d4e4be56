import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type TwoDepots, testedStores, twoDepots } from "./stores-for-tests.ts";

describe.each(testedStores())("documents of a hire on $kind", ({ kind }) => {
  let depots: TwoDepots;
  beforeAll(async () => {
    depots = await twoDepots(kind);
  });
  afterAll(() => depots.place.remove());

  const newHire = async () =>
    (await depots.here.hires.create({ from: "2026-07-01T10:00:00Z", to: "2026-07-08T10:00:00Z" })).id;

  test("have a version each, by hire and by name; a save from an older one says which is kept", async () => {
    const { hires } = depots.here;
    const [one, other] = [await newHire(), await newHire()];
    const put = (id: string, name: "load" | "trip", n: number, version: number) =>
      hires.putPart(id, name, { n }, version, "desk");
    expect(await put(one, "trip", 1, 0)).toEqual({ ok: true, version: 1 });
    expect(await put(one, "load", 1, 0)).toEqual({ ok: true, version: 1 });
    expect(await put(other, "load", 7, 0)).toEqual({ ok: true, version: 1 });
    expect(await put(one, "trip", 2, 1)).toEqual({ ok: true, version: 2 });
    expect(await put(one, "trip", 3, 2)).toEqual({ ok: true, version: 3 });
    expect(await put(one, "load", 2, 1)).toEqual({ ok: true, version: 2 });
    // what one desk began from, another has gone on from
    expect(await put(one, "load", 9, 1)).toEqual({ ok: false, why: "stale", version: 2 });
    expect(await put(one, "load", 9, 0)).toEqual({ ok: false, why: "stale", version: 2 });
    expect(await put(other, "trip", 9, 4)).toEqual({ ok: false, why: "stale", version: 0 });
    expect(await hires.part(one, "load")).toMatchObject({ document: { n: 2 }, version: 2 });
    expect(await hires.part(other, "trip")).toBeNull();
    expect(Object.keys(await hires.parts(one)).sort()).toEqual(["load", "trip"]);
    const loads = await hires.partsOf([one, other], ["load"]);
    expect([...loads].map(([id, parts]) => [id, Object.keys(parts), parts.load?.document])).toEqual(
      expect.arrayContaining([
        [one, ["load"], { n: 2 }],
        [other, ["load"], { n: 7 }],
      ]),
    );
  });

  test("are not there for another depot, nor for a hire that is none", async () => {
    const id = await newHire();
    await depots.here.hires.putPart(id, "load", { n: 1 }, 0, "desk");
    const { hires } = depots.there;
    expect(await hires.putPart(id, "load", { n: 2 }, 1, "desk")).toEqual({ ok: false, why: "notFound" });
    expect(await hires.part(id, "load")).toBeNull();
    expect((await hires.partsOf([id])).size).toBe(0);
    expect(await depots.here.hires.putPart("nobody", "load", {}, 0, "desk")).toMatchObject({
      why: "notFound",
    });
  });
});
