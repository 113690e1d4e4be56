import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays } from "../../base/years.ts";
import { quoteHire } from "./quote-hire.ts";
import { testTerms } from "./test-terms.ts";
import { type QuoteInput, termsSchema } from "./types.ts";

const ask = (change: Partial<QuoteInput> = {}) =>
  quoteHire({
    terms: testTerms(),
    vehicleClass: "panelVan",
    from: "2026-05-09T15:00",
    to: "2026-05-16T10:00",
    today: "2026-03-01",
    party: { travellers: [{ id: "a", kind: "adult" }], dogs: 0, experience: "first" },
    drivers: 1,
    extras: [],
    countries: ["GB"],
    ...change,
  });
const price = (change: Partial<QuoteInput> = {}) => ask(change).result!;

describe("a quote", () => {
  it("holds the terms of the schema", () => {
    expect(termsSchema.safeParse(testTerms()).success).toBe(true);
  });

  it("shows nights, the long-hire step and every compulsory charge in the first price", () => {
    const quote = price();
    expect(quote.lines.map(({ code, amount }) => [code, amount.pence])).toEqual([
      ["nights", 73500],
      ["longHire", -3675],
      ["compulsory", 4500],
    ]);
    expect(quote.total.pence).toBe(74325);
    expect([quote.bookingDeposit.pence, quote.balance.pence]).toEqual([11149, 63176]);
    expect([quote.allowanceKm.value, quote.securityDeposit.pence]).toEqual([1680, 100000]);
  });

  it("takes the VAT that lies in a price of 20 %", () => {
    expect(price().lines[0]?.vat).toMatchObject({ ratePercent: 20, amount: { pence: 12250 } });
    expect(price().vat.pence).toBe(12250 - 613 + 750);
  });

  it("splits a hire over the change of season and keeps the longer of the minimum stays", () => {
    const quote = price({ from: "2026-06-28T15:00", to: "2026-07-05T10:00" });
    expect(quote.lines.slice(0, 2).map(({ about, count }) => [about, count])).toEqual([
      ["mid", 3],
      ["high", 4],
    ]);
    const short = ask({ from: "2026-06-29T15:00", to: "2026-07-03T10:00" });
    expect(short.result).toBeNull();
    expect(short.findings).toMatchObject([
      { code: "quote.tooShort", severity: "refuse", facts: { nights: 4, minimum: 7 } },
    ]);
  });

  it("adds drivers, extras up to their cap and the charge for going abroad", () => {
    const quote = price({
      drivers: 3,
      extras: [
        { id: "bikeRack", count: 1 },
        { id: "bedding", count: 2 },
      ],
      countries: ["GB", "FR"],
      to: "2026-05-23T10:00",
    });
    expect(quote.lines.slice(2).map(({ code, amount, vat }) => [code, amount.pence, vat.kind])).toEqual([
      ["compulsory", 4500, "standard"],
      ["abroad", 9500, "exempt"],
      ["extraDriver", 5000, "standard"],
      ["extra", 4000, "standard"],
      ["extra", 6000, "standard"],
    ]);
    expect(quote.securityDeposit.pence).toBe(150000);
  });

  it("has no line for going abroad where that costs nothing, and none at home", () => {
    const codes = (pence: number, countries: string[]) =>
      price({ terms: testTerms({ abroad: { ...testTerms().abroad, pence } }), countries }).lines.map(
        ({ code }) => code,
      );
    expect(codes(0, ["GB", "FR"])).not.toContain("abroad");
    expect(codes(1, ["GB", "FR"])).toContain("abroad");
    expect(codes(1, ["GB"])).not.toContain("abroad");
  });

  it("refuses more of an extra than there is, by what the rate card says where nobody counted", () => {
    expect(ask({ extras: [{ id: "bikeRack", count: 2 }] }).findings).toEqual([]);
    expect(ask({ extras: [{ id: "bikeRack", count: 3 }] }).findings).toMatchObject([
      { code: "quote.extraShort", facts: { extra: "bikeRack", count: 3, free: 2 } },
    ]);
    expect(ask({ extras: [{ id: "bikeRack", count: 2, free: 1 }] }).findings).toMatchObject([
      { code: "quote.extraShort", facts: { extra: "bikeRack", count: 2, free: 1 } },
    ]);
  });

  it("warns where the hold on the card ends before the deposit is due back", () => {
    expect(ask({ to: "2026-06-06T10:00" }).findings).toMatchObject([
      { code: "money.authorisationLapses", severity: "condition" },
    ]);
  });

  it("counts the working days until the deposit goes back as whole days: four are six by the calendar", () => {
    const security = { ...testTerms().security, authorisationDays: 28, releaseWorkingDays: 4 };
    const codes = (nights: number) =>
      ask({
        terms: testTerms({ security }),
        to: `${addDays("2026-05-09", nights)}T10:00`,
      }).findings.map(({ code, facts }) => [code, facts.held]);
    expect(codes(22)).toEqual([]);
    expect(codes(23)).toEqual([["money.authorisationLapses", 29]]);
  });

  it("names what it cannot use", () => {
    expect(() => ask({ to: "2026-05-08T10:00" })).toThrow(/^to: expected a time after/);
    expect(() => ask({ vehicleClass: "yacht" })).toThrow(/^vehicleClass: expected one of panelVan/);
    expect(() => ask({ extras: [{ id: "piano", count: 1, free: 1 }] })).toThrow(
      /^extras.0.id: expected one of bedding/,
    );
    // of what is not on the rate card none is short: it is not known
    expect(() =>
      ask({
        extras: [
          { id: "bedding", count: 1 },
          { id: "piano", count: 1 },
        ],
      }),
    ).toThrow(/^extras.1.id: expected one of bedding/);
    expect(() => ask({ terms: testTerms({ seasons: testTerms().seasons.slice(0, 1) }) })).toThrow(
      /^terms.seasons: expected a season for every day/,
    );
  });

  it("six nights cost no more than seven, and the line says so", () => {
    const terms = testTerms({ longHire: [{ fromNights: 7, reductionPercent: 25 }] });
    const quote = price({ terms, to: "2026-05-15T10:00" });
    expect(quote.lines[1]).toMatchObject({
      code: "longerPeriod",
      about: "7",
      amount: { pence: -(63000 - 55125) },
    });
  });

  it("is never dearer than a longer hire from the same day, its lines sum to the total, and it is whole pence", () => {
    const steps = fc.array(
      fc.record({
        fromNights: fc.integer({ min: 2, max: 40 }),
        reductionPercent: fc.integer({ min: 0, max: 60 }),
      }),
      { maxLength: 4 },
    );
    const day = fc.integer({ min: 0, max: 364 });
    fc.assert(
      fc.property(day, fc.integer({ min: 7, max: 58 }), steps, (offset, nights, longHire) => {
        const first = addDays("2026-01-01", offset);
        const terms = testTerms({ longHire, security: { ...testTerms().security, authorisationDays: 90 } });
        const of = (n: number) =>
          price({ terms, from: `${first}T15:00`, to: `${addDays(first, n)}T10:00`, today: "2026-01-01" });
        const [shorter, longer] = [of(nights), of(nights + 1)];
        expect(shorter.total.pence).toBeLessThanOrEqual(longer.total.pence);
        expect(shorter.lines.reduce((sum, { amount }) => sum + amount.pence, 0)).toBe(shorter.total.pence);
        expect(Number.isSafeInteger(shorter.vat.pence)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
});
