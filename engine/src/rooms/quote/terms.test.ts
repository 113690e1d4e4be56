import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays } from "../../base/years.ts";
import { chargeOnEnding } from "./charge-on-ending.ts";
import { checkTerms } from "./check-terms.ts";
import { quoteHire } from "./quote-hire.ts";
import { rateDays } from "./rate-year.ts";
import { testTerms } from "./test-terms.ts";
import type { QuoteInput, Terms } from "./types.ts";

const season = (id: string, from: string, to: string, pence = 10000): Terms["seasons"][number] => ({
  id,
  spans: [{ from, to }],
  nightPence: { panelVan: pence },
  minimumNights: 1,
});
const check = (seasons: Terms["seasons"], classes: readonly string[] = []) =>
  checkTerms({ terms: testTerms({ seasons }), classes });

describe("a rate card", () => {
  it("refuses a day without a price, also the 29th of February, and says which days", () => {
    const { result, findings } = check([season("a", "01-01", "02-28"), season("b", "03-01", "12-24")]);
    expect(result.gaps).toEqual([
      { from: "02-29", to: "02-29", days: 1 },
      { from: "12-25", to: "12-31", days: 7 },
    ]);
    expect(findings.filter(({ code }) => code === "terms.gap")).toHaveLength(2);
    expect(findings[0]).toMatchObject({ severity: "refuse", facts: { fromDay: 29, fromMonth: "02" } });
  });

  it("says which season wins where two hold a day", () => {
    const { result, findings } = check([season("feast", "12-20", "01-03"), season("year", "01-01", "12-31")]);
    expect(result.overlaps).toEqual([
      { from: "01-01", to: "01-03", days: 3, wins: "feast", over: "year" },
      { from: "12-20", to: "12-31", days: 12, wins: "feast", over: "year" },
    ]);
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([
      ["terms.scaleOpen", "note"],
      ["terms.overlap", "note"],
      ["terms.overlap", "note"],
    ]);
  });

  it("refuses seasons that run into each other, and one that others cover on each of its days", () => {
    const year = season("year", "01-01", "12-31");
    const run = check([season("summer", "06-01", "08-31"), season("autumn", "08-15", "10-31"), year]);
    const refused = ({ findings }: typeof run) =>
      findings.filter(({ severity }) => severity === "refuse").map(({ code, facts }) => [code, facts]);
    expect(refused(run)).toEqual([
      [
        "terms.straddle",
        {
          first: "summer",
          second: "autumn",
          fromDay: 15,
          fromMonth: "08",
          toDay: 31,
          toMonth: "08",
          days: 17,
        },
      ],
    ]);
    expect(refused(check([year, season("feast", "12-20", "01-03")]))).toEqual([
      ["terms.seasonHidden", { season: "feast" }],
    ]);
    expect(
      refused(check([season("winter", "11-01", "03-20"), season("spring", "03-21", "05-31"), year])),
    ).toEqual([]);
    // over the end of the year, too
    expect(
      refused(check([season("feast", "12-20", "01-10"), season("new", "01-05", "02-01"), year])),
    ).toMatchObject([["terms.straddle", { fromDay: 5, toDay: 10, days: 6 }]]);
  });

  it("refuses a class of the fleet without a price, a season named twice and a scale that keeps less later", () => {
    const { findings } = checkTerms({
      terms: testTerms({
        seasons: [season("a", "01-01", "06-30"), season("a", "07-01", "12-31")],
        cancellation: [
          { atLeastDaysBefore: 30, keepPercent: 50 },
          { atLeastDaysBefore: 0, keepPercent: 20 },
        ],
      }),
      classes: ["overcab"],
    });
    expect(findings.map(({ code }) => code)).toEqual([
      "terms.classWithoutPrice",
      "terms.classWithoutPrice",
      "terms.seasonTwice",
      "terms.scaleFalls",
    ]);
  });

  it("takes a scale that keeps more the nearer the day, in whichever order it is written, and notes one that ends early", () => {
    const scale = (...steps: readonly [number, number][]) =>
      checkTerms({
        terms: testTerms({
          cancellation: steps.map(([atLeastDaysBefore, keepPercent]) => ({ atLeastDaysBefore, keepPercent })),
        }),
        classes: ["panelVan"],
      })
        .findings.filter(({ code }) => code.startsWith("terms.scale"))
        .map(({ code, facts }) => [code, facts.days]);
    expect(scale([42, 15], [14, 50], [0, 90])).toEqual([]);
    expect(scale([0, 90], [42, 15], [14, 15])).toEqual([]);
    expect(scale([42, 15], [14, 50], [0, 49])).toEqual([["terms.scaleFalls", 0]]);
    expect(scale([42, 15], [14, 50])).toEqual([["terms.scaleOpen", 14]]);
  });

  it("shows every day of a year with its season, its price and the least nights", () => {
    const days = rateDays(testTerms(), "2026-06-29", 4);
    expect(days.map(({ date, season: of, minimumNights }) => [date, of, minimumNights])).toEqual([
      ["2026-06-29", "mid", 3],
      ["2026-06-30", "mid", 3],
      ["2026-07-01", "high", 7],
      ["2026-07-02", "high", 7],
    ]);
    expect(days[2]).toMatchObject({ under: ["mid"], nightPence: { panelVan: 15000 } });
    expect(days[2]?.weekPence.panelVan).toBe(Math.round(7 * 15000 * 0.95));
    const gap = rateDays(testTerms({ seasons: [season("a", "01-01", "06-30")] }), "2026-07-01", 1);
    expect(gap[0]).toMatchObject({ season: null, nightPence: {}, weekPence: {} });
  });
});

describe("a hire that is cancelled", () => {
  const at = (endedOn: string, paidPence = 20000) =>
    chargeOnEnding({
      cancellation: [
        { atLeastDaysBefore: 0, keepPercent: 90 },
        { atLeastDaysBefore: 42, keepPercent: 15 },
      ],
      totalPence: 100001,
      paidPence,
      startsOn: "2026-07-10",
      endedOn,
    });

  it("costs the step with the most days that is reached", () => {
    expect(at("2026-05-29")).toMatchObject({
      daysBefore: { value: 42 },
      keep: { pence: 15000 },
      refund: { pence: 5000 },
    });
    expect(at("2026-05-30")).toMatchObject({
      daysBefore: { value: 41 },
      keep: { pence: 90001 },
      owed: { pence: 70001 },
    });
    expect(at("2026-07-12").daysBefore.value).toBe(0);
  });

  it("what is kept and what goes back is what was paid and what is owed", () => {
    fc.assert(
      fc.property(fc.nat({ max: 1_000_000 }), fc.integer({ min: -5, max: 400 }), (paid, days) => {
        const { keep, refund, owed } = at(addDays("2026-07-10", -days), paid);
        expect(keep.pence + refund.pence).toBe(paid + owed.pence);
      }),
    );
  });
});

const base: QuoteInput = {
  terms: testTerms({ discounts: [{ id: "returning", mostPercent: { manager: 20, desk: 5 } }] }),
  vehicleClass: "panelVan",
  from: "2026-05-09T15:00",
  to: "2026-05-16T10:00",
  today: "2026-03-01",
  party: { travellers: [{ id: "a", kind: "adult" }], dogs: 0, experience: "first" },
  drivers: 1,
  extras: [],
  countries: ["GB"],
};
const discount = (role: string, change: object) =>
  quoteHire({ ...base, discount: { kind: "returning", reason: "third hire", role, ...change } });

describe("a discount", () => {
  it("is a line of its own after the nights, within what the terms let the role give", () => {
    const { result } = discount("desk", { percent: 5 });
    expect(result?.lines.map(({ code, amount }) => [code, amount.pence])).toEqual([
      ["nights", 73500],
      ["longHire", -3675],
      ["discount", -3491],
      ["compulsory", 4500],
    ]);
    expect(discount("desk", { percent: 6 })).toMatchObject({
      result: null,
      findings: [{ code: "quote.discountBeyond", facts: { role: "desk", most: 5 } }],
    });
    expect(discount("manager", { percent: 20 }).result).not.toBeNull();
    expect(discount("yard", { pence: 1 }).result).toBeNull();
    expect(() => discount("desk", {})).toThrow(/^discount: expected either/);
    expect(() => discount("desk", { kind: "friend", percent: 1 })).toThrow(/^discount.kind: expected one of/);
  });
});

const randomTerms = fc
  .record({
    nights: fc.array(fc.integer({ min: 0, max: 30000 }), { minLength: 3, maxLength: 3 }),
    cut: fc.tuple(fc.integer({ min: 2, max: 6 }), fc.integer({ min: 7, max: 11 })),
    longHire: fc.array(
      fc.record({
        fromNights: fc.integer({ min: 2, max: 30 }),
        reductionPercent: fc.integer({ min: 0, max: 90 }),
      }),
      { maxLength: 4 },
    ),
    maximumNights: fc.integer({ min: 20, max: 45 }),
  })
  .map(({ nights, cut: [a, b], longHire, maximumNights }) => {
    const month = (n: number) => `${String(n).padStart(2, "0")}-01`;
    return testTerms({
      seasons: [
        season("one", month(a), month(b), nights[0]),
        season("two", month(b), month(a), nights[1]),
        season("rest", "01-01", "12-31", nights[2]),
      ],
      longHire,
      maximumNights,
      discounts: [{ id: "returning", mostPercent: { manager: 100 } }],
    });
  });

it("over any terms and days a longer hire is never cheaper than a shorter one, lines sum, and nothing is below zero", () => {
  fc.assert(
    fc.property(
      randomTerms,
      fc.nat({ max: 364 }),
      fc.integer({ min: 1, max: 19 }),
      fc.integer({ min: 1, max: 20 }),
      fc.integer({ min: 0, max: 100 }),
      (terms, offset, n, more, percent) => {
        const first = addDays("2027-01-01", offset);
        const of = (nights: number) =>
          quoteHire({
            ...base,
            terms,
            today: "2026-12-01",
            from: `${first}T15:00`,
            to: `${addDays(first, nights)}T10:00`,
            extras: [{ id: "bikeRack", count: 1 }],
            discount: { kind: "returning", reason: "test", role: "manager", percent },
          }).result;
        const [shorter, longer] = [of(n), of(Math.min(n + more, terms.maximumNights))];
        if (shorter === null || longer === null) throw new Error("terms refuse what they should take");
        expect(shorter.total.pence).toBeLessThanOrEqual(longer.total.pence);
        expect(shorter.lines.reduce((sum, { amount }) => sum + amount.pence, 0)).toBe(shorter.total.pence);
        expect(shorter.total.pence).toBeGreaterThanOrEqual(0);
      },
    ),
    { numRuns: 120 },
  );
});
