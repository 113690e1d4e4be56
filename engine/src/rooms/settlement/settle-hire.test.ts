import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { testTerms } from "../quote/test-terms.ts";
import { addWorkingDays, settleHire } from "./settle-hire.ts";
import type { InputDifference } from "./settlement-line.ts";
import { amounts, base, input, kit, mark, photo, reading, settle } from "./test-settlement.ts";
import { MARK_CLASSES, settlementInputSchema } from "./types.ts";

describe("a settlement", () => {
  it("without differences gives the whole deposit back by the stated working day", () => {
    expect(settle([])).toMatchObject({
      lines: [],
      total: { pence: 0 },
      depositReturned: { pence: 100000 },
      releaseBy: "2026-05-22",
    });
    expect(addWorkingDays("2026-05-15", 5)).toBe("2026-05-22");
  });

  it("charges distance beyond the allowance and its one per cent of grace", () => {
    expect(amounts(settle([reading("mileage", 20000, 21696, "km")]))).toEqual([["mileage", 0]]);
    const over = settle([reading("mileage", 20000, 21796.8, "km")]);
    expect(amounts(over)).toEqual([["mileage", 1900]]);
    expect(over.lines[0]?.evidence).toEqual({
      records: ["o1", "b1"],
      photographs: [photo],
      differenceId: "reading:mileage",
    });
  });

  it("charges fuel like for like with the stated service fee, and pays nothing for more", () => {
    expect(amounts(settle([reading("fuel", 1, 0.75, "share")]))).toEqual([
      ["fuel", 3375],
      ["fuelService", 1000],
    ]);
    expect(amounts(settle([reading("fuel", 0.5, 1, "share")]))).toEqual([["notCharged", 0]]);
    expect(amounts(settle([reading("lpg", 12, 10, "kg")]))).toEqual([["lpg", 500]]);
    expect(amounts(settle([reading("def", 9000, 7000, "km")]))).toEqual([["def", 450]]);
  });

  it("says of every price that it took from the terms from which day they hold", () => {
    const waste = {
      ...base,
      id: "look:waste",
      kind: "look",
      charge: "wasteWater",
      view: "underside",
    } as const;
    const read = [reading("mileage", 0, 90_000, "km"), reading("fuel", 1, 0.5, "share")];
    const metered = [reading("lpg", 12, 10, "kg"), reading("def", 9000, 7000, "km")];
    const { lines } = settle([...read, ...metered, mark("m1"), kit(1), waste], {
      classes: { m1: "hirer", "count:leads": "hirer", "look:waste": "hirer" },
      cleaning: { hours: 1, records: ["c1"], photographs: [] },
      hire: { ...input([]).hire, returnedAt: "2026-05-16T15:00" },
      lateLosses: [{ kind: "overtime", pence: 900, about: "Two hours", records: ["l1"], photographs: [] }],
    });
    const { id, validFrom } = testTerms();
    for (const { code, because, working } of lines) {
      expect(because, code).toBeNull();
      const prices = working.filter(({ source }) => source === id);
      expect(prices.length, code).toBe(1);
      for (const { inputs } of prices) expect(inputs.termsFrom, code).toBe(validFrom);
    }
    expect(lines).toHaveLength(10);
  });

  it("says that nothing is entered where the terms have no sum for a tank left full or for cleaning", () => {
    const full = {
      ...base,
      id: "look:waste",
      kind: "look",
      charge: "wasteWater",
      view: "underside",
    } as const;
    const asked = input([full], {
      classes: { "look:waste": "hirer" },
      cleaning: { hours: 1, records: ["c1"], photographs: [] },
    });
    Object.assign(asked.terms.tariff, { wasteNotEmptiedPence: 0, cleaningPencePerHour: 0 });
    const { lines, total } = settleHire(asked).result;
    expect(lines.map(({ because }) => because)).toEqual(["noTariff", "noTariff"]);
    expect(total.pence).toBe(0);
  });

  it("charges a mark by the matrix when it is the hirer's, and not when nobody knows", () => {
    expect(amounts(settle([mark("m1")], { classes: { m1: "hirer" } }))).toEqual([["damage", 9000]]);
    expect(amounts(settle([mark("m1", { sizeMm: 300 })], { classes: { m1: "hirer" } }))).toEqual([
      ["damage", 24000],
    ]);
    expect(amounts(settle([mark("m1", { sizeMm: null })], { classes: { m1: "hirer" } }))).toEqual([
      ["damage", 9000],
    ]);
    expect(
      amounts(
        settle([mark("m1", { part: "body.panelNearside", charge: null })], { classes: { m1: "hirer" } }),
      ),
    ).toEqual([["damage", 9000]]);
    // a reading is nobody's to decide
    const answer = settleHire(input([mark("m1"), reading("mileage", 0, 100, "km")]));
    expect(answer.result.lines[0]).toMatchObject({
      code: "notCharged",
      because: "unknown",
      amount: { pence: 0 },
    });
    expect(answer.findings).toMatchObject([{ code: "settlement.undecided", facts: { count: 1 } }]);
  });

  it("takes the lower of the estimate and the matrix", () => {
    expect(amounts(settle([mark("m1")], { classes: { m1: "hirer" }, estimates: { m1: 6500 } }))).toEqual([
      ["damage", 6500],
    ]);
    expect(amounts(settle([mark("m1")], { classes: { m1: "hirer" }, estimates: { m1: 19500 } }))).toEqual([
      ["damage", 9000],
    ]);
  });

  it("charges no betterment: a torn awning of four years in eight at half, of unknown age at its least", () => {
    const torn = mark("m1", { part: "awning.cassette", systemKind: "awning", markKind: "tear" });
    const aged = input([torn], { classes: { m1: "hirer" } });
    expect(amounts(settleHire({ ...aged, hire: { ...aged.hire, ageYears: { awning: 4 } } }).result)).toEqual([
      ["damage", 30000],
    ]);
    expect(amounts(settleHire(aged).result)).toEqual([["damage", 6000]]);
    expect(settleHire(aged).result.lines[0]?.working[1]).toMatchObject({
      formula: "worth.remainingShare",
      basis: "default",
    });
  });

  it("charges missing kit at what is left of its value", () => {
    const one = input([kit(1)], { classes: { "count:leads": "hirer" } });
    expect(
      amounts(settleHire({ ...one, hire: { ...one.hire, ageYears: { "hookUp.leads": 2 } } }).result),
    ).toEqual([["kit", 3600]]);
  });

  it("charges a mark to one hire only", () => {
    expect(
      settle([mark("m1")], { classes: { m1: "hirer" }, chargedElsewhere: ["r-m1"] }).lines,
    ).toMatchObject([{ code: "notCharged", because: "chargedElsewhere" }]);
  });

  it("charges waste that was not emptied once, and cleaning by the hour", () => {
    const waste: InputDifference = {
      ...base,
      id: "look:waste",
      kind: "look",
      charge: "wasteWater",
      view: "underside",
    };
    const dirty = input([waste], {
      classes: { "look:waste": "hirer" },
      cleaning: { hours: 1.5, records: ["c1"], photographs: [] },
    });
    expect(amounts(settleHire(dirty).result)).toEqual([
      ["waste", 3000],
      ["cleaning", 4500],
    ]);
  });

  it("caps damage at the excess and nothing else", () => {
    const marks = Array.from({ length: 8 }, (_, k) => mark(`m${k}`, { sizeMm: 500 }));
    const classes = Object.fromEntries(marks.map(({ id }) => [id, "hirer" as const]));
    const settlement = settle([...marks, reading("lpg", 12, 10, "kg")], { classes });
    expect(settlement.total.pence).toBe(150000 + 500);
    expect(settlement.overExcess.pence).toBe(-42000);
    expect(settlement).toMatchObject({
      depositKept: { pence: 100000 },
      depositReturned: { pence: 0 },
      stillOwed: { pence: 50500 },
    });
  });

  it("holds only the disputed part of the deposit back", () => {
    const settlement = settle([mark("m1"), reading("lpg", 12, 10, "kg")], {
      classes: { m1: "hirer" },
      disputed: ["m1"],
    });
    expect(settlement).toMatchObject({
      disputed: { pence: 9000 },
      depositKept: { pence: 500 },
      depositWithheld: { pence: 9000 },
      depositReturned: { pence: 90500 },
    });
  });

  it("names a class or a dispute of something that is not there", () => {
    expect(() => settle([], { classes: { m9: "hirer" } })).toThrow(
      /^classes.m9: expected the id of a difference/,
    );
    expect(() => settle([], { disputed: ["m9"] })).toThrow(/^disputed.0: expected the id of a line/);
    expect(() => settleHire({ ...input([]), hire: { ...input([]).hire, to: "2026-05-01T10:00" } })).toThrow(
      /^hire.to/,
    );
  });

  it("reads its own input by the published schema", () => {
    expect(
      settlementInputSchema.safeParse(input([mark("m1"), kit(1), reading("fuel", 1, 0.75, "share")])).error
        ?.issues ?? [],
    ).toEqual([]);
  });

  it("lines and cap sum to the total, damage stays at the excess, no refund is negative, unknown and existing cost nothing", () => {
    const anyMark = fc.record({
      decided: fc.option(fc.constantFrom(...MARK_CLASSES)),
      sizeMm: fc.option(fc.integer({ min: 1, max: 900 })),
      kind: fc.constantFrom("scratch" as const, "tear" as const, "dent" as const),
      disputed: fc.boolean(),
      estimate: fc.option(fc.integer({ min: 0, max: 900000 })),
    });
    const meters = fc.record({
      km: fc.integer({ min: 0, max: 9000 }),
      fuel: fc.double({ min: 0, max: 1, noNaN: true }),
      kg: fc.double({ min: 0, max: 12, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(anyMark, { maxLength: 12 }),
        meters,
        fc.integer({ min: 0, max: 300000 }),
        (marks, { km, fuel, kg }, depositPence) => {
          const found = marks.map((each, k) =>
            mark(`m${k}`, {
              sizeMm: each.sizeMm,
              markKind: each.kind,
              systemKind: each.kind === "tear" ? "awning" : null,
            }),
          );
          const pick = <T>(of: (each: (typeof marks)[number]) => T | null) =>
            Object.fromEntries(
              marks.flatMap((each, k) => (of(each) === null ? [] : [[`m${k}`, of(each) as T]])),
            );
          const settlement = settle(
            [
              ...found,
              reading("mileage", 0, km, "km"),
              reading("fuel", 1, fuel, "share"),
              reading("lpg", 12, kg, "kg"),
            ],
            {
              classes: pick(({ decided }) => decided),
              estimates: pick(({ estimate }) => estimate),
              disputed: marks.flatMap(({ disputed }, k) => (disputed ? [`m${k}`] : [])),
              depositPence,
            },
          );
          const {
            lines,
            total,
            overExcess,
            depositKept,
            depositWithheld,
            depositReturned,
            stillOwed,
            disputed,
          } = settlement;
          expect(lines.reduce((sum, { amount }) => sum + amount.pence, 0) + overExcess.pence).toBe(
            total.pence,
          );
          const capped = lines
            .filter((line) => line.capped)
            .reduce((sum, { amount }) => sum + amount.pence, 0);
          expect(capped + overExcess.pence).toBeLessThanOrEqual(testTerms().security.excessPence);
          for (const money of [total, depositKept, depositWithheld, depositReturned, stillOwed, disputed])
            expect(money.pence >= 0 && Number.isSafeInteger(money.pence)).toBe(true);
          expect(depositKept.pence + depositWithheld.pence + depositReturned.pence).toBe(depositPence);
          expect(depositKept.pence + stillOwed.pence + disputed.pence).toBe(total.pence);
          for (const [k, each] of marks.entries())
            if (each.decided !== "hirer")
              expect(lines.find(({ id }) => id === `m${k}`)?.amount.pence).toBe(0);
        },
      ),
    );
  });
});
