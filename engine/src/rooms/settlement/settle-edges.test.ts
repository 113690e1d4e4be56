import { describe, expect, it } from "vitest";
import { workingOfRepair } from "./repair-cost.ts";
import { settleHire } from "./settle-hire.ts";
import { amounts, input, kit, lateClaim, mark, photo, settle } from "./test-settlement.ts";
import { windowsOf } from "./windows.ts";

describe("what is not charged", () => {
  const classes = { m1: "hirer" as const };

  it("a dent has no price where the terms price scratches only", () => {
    expect(settle([mark("m1", { markKind: "dent" })], { classes }).lines).toMatchObject([
      { code: "notCharged", because: "noTariff", amount: { pence: 0 } },
    ]);
  });

  it("a tear of the body has none where the terms price the awning's", () => {
    expect(amounts(settle([mark("m1", { markKind: "tear" })], { classes }))).toEqual([["notCharged", 0]]);
  });

  it("a mark of which one of two records was charged to another hire", () => {
    const twice = mark("m1", { backRecords: ["r-new", "r-old"] });
    expect(settle([twice], { classes, chargedElsewhere: ["r-old"] }).lines).toMatchObject([
      { code: "notCharged", because: "chargedElsewhere" },
    ]);
    expect(amounts(settle([twice], { classes, chargedElsewhere: ["r-other"] }))).toEqual([["damage", 9000]]);
  });

  it("cleaning that took no time is no line at all, and cleaning nobody can show is one at nothing", () => {
    const cleaned = (hours: number, records: string[]) =>
      settle([], { cleaning: { hours, records, photographs: [] } }).lines;
    expect(cleaned(0, ["c1"])).toEqual([]);
    expect(cleaned(1, [])).toMatchObject([{ code: "cleaning", because: "noEvidence", amount: { pence: 0 } }]);
  });
});

describe("what is charged all the same", () => {
  it("kit that is short, of whose place no photograph is asked", () => {
    const short = settle([kit(1)], { classes: { "count:leads": "hirer" }, departure: {} });
    expect(amounts(short)).toEqual([["kit", 600]]);
    expect(amounts(settle([mark("m1")], { classes: { m1: "hirer" }, departure: {} }))).toEqual([
      ["notCharged", 0],
    ]);
  });

  it("a late claim, with the cost of parts and work and the share of their value that is left", () => {
    const [line] = settle([], { claims: [lateClaim] }).lines;
    expect(line?.working.map(({ value, unit }) => [value, unit])).toEqual([
      [40_000, "pence"],
      [10_000, "pence"],
      [0.5, "share"],
    ]);
  });
});

describe("what a settlement says of itself", () => {
  it("how many were found too late, were not seen as they left, or have no price", () => {
    const said = (change: Parameters<typeof input>[1], code: string) =>
      settleHire(
        input([mark("m1"), mark("m2")], { classes: { m1: "hirer", m2: "hirer" }, ...change }),
      ).findings.find((finding) => finding.code === `settlement.${code}`)?.facts.count;
    expect(said({ foundLate: ["m1"] }, "afterWindow")).toBe(1);
    expect(said({}, "afterWindow")).toBeUndefined();
    expect(said({ departure: { m1: [photo] } }, "noDeparture")).toBe(1);
    expect(said({ departure: { m1: [photo], m2: [photo] } }, "noDeparture")).toBeUndefined();
  });
});

describe("the working of a repair", () => {
  it("says that an invoice was measured and an estimate declared", () => {
    const basisOf = (from: "estimate" | "invoice") =>
      workingOfRepair({ partsPence: 6000, labourPence: 4000 }, "inFull", from).map(
        ({ value, basis, inputs }) => [value, basis, inputs.from],
      );
    expect(basisOf("invoice")).toEqual([
      [6000, "measured", "invoice"],
      [4000, "measured", "invoice"],
    ]);
    expect(basisOf("estimate").map(([, basis]) => basis)).toEqual(["declared", "declared"]);
  });
});

describe("the windows that the hirer signs for", () => {
  it("are those of the terms, else a day for additions and two for the second look", () => {
    expect(windowsOf({ windows: { additionsHours: 12, secondLookHours: 36 } })).toEqual({
      additionsHours: 12,
      secondLookHours: 36,
    });
    for (const none of [null, {}])
      expect(windowsOf(none)).toEqual({ additionsHours: 24, secondLookHours: 48 });
  });
});
