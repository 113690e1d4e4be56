import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { testTerms } from "../quote/test-terms.ts";
import { settleHire } from "./settle-hire.ts";
import { input, kit, mark, photo, reading, settle } from "./test-settlement.ts";
import type { SettlementInput } from "./types.ts";

describe("a repair from the estimate to the invoice", () => {
  const torn = mark("m1", { part: "awning.cassette", systemKind: "awning", markKind: "tear" });
  const awning = (change: Partial<SettlementInput> = {}): SettlementInput => {
    const terms = testTerms();
    const made = input([torn], { classes: { m1: "hirer" }, departure: { m1: [photo] }, ...change });
    return {
      ...made,
      terms: {
        ...terms,
        security: { ...terms.security, excessPence: 100_000 },
        tariff: {
          ...terms.tariff,
          damage: [],
          kit: { awning: { newPence: 90_000, lifeYears: 8, leastShare: 0.1 } },
        },
      },
      hire: { ...made.hire, ageYears: { awning: 4 } },
    };
  };
  const estimates = { m1: { partsPence: 90_000, labourPence: 30_000 } };

  it("charges an awning of four years in eight: half the parts, the work in full, and shows the policy", () => {
    const [line] = settleHire(awning({ estimates })).result.lines;
    expect(line).toMatchObject({ code: "damage", amount: { pence: 75_000 } });
    expect(line?.working.map(({ value, inputs }) => [value, inputs.labour ?? null])).toEqual([
      [90_000, null],
      [30_000, "inFull"],
      [0.5, null],
    ]);
  });

  it("gives the difference back when the invoice is lower, and never asks for more when it is higher", () => {
    const before = settleHire(awning({ estimates })).result;
    const lower = settleHire(
      awning({ estimates, invoices: { m1: { partsPence: 64_000, labourPence: 30_000 } } }),
    );
    expect(lower.result.total.pence).toBe(62_000);
    expect(before.total.pence - lower.result.total.pence).toBe(13_000);
    const higher = awning({ estimates, invoices: { m1: { partsPence: 200_000, labourPence: 60_000 } } });
    expect(settleHire(higher).result.total.pence).toBe(75_000);
  });

  it("reduces the work as well where the terms say so", () => {
    const made = awning({ estimates });
    const terms = { ...made.terms, tariff: { ...made.terms.tariff, labour: "asParts" as const } };
    expect(settleHire({ ...made, terms }).result.total.pence).toBe(60_000);
  });

  it("charges nothing where no photograph shows how the place left", () => {
    const { result, findings } = settleHire(awning({ estimates, departure: { m1: [] } }));
    expect(result.lines).toMatchObject([{ because: "noDeparturePhotograph", amount: { pence: 0 } }]);
    expect(findings.map(({ code }) => code)).toContain("settlement.noDeparture");
  });

  it("wants a second person for what was decided after the window, and not before", () => {
    const decided = (on: string, secondSigned: string[] = []) =>
      settleHire(awning({ estimates, decidedOn: { m1: on }, secondSigned })).result.total.pence;
    expect(decided("2026-05-26")).toBe(75_000);
    expect(decided("2026-05-27")).toBe(0);
    expect(decided("2026-05-27", ["m1"])).toBe(75_000);
  });

  it("takes the days for that from the terms where they say so", () => {
    const decided = (secondSignatureAfterDays: number) => {
      const made = awning({ estimates, decidedOn: { m1: "2026-05-19" } });
      return settleHire({ ...made, terms: { ...made.terms, secondSignatureAfterDays } });
    };
    expect(decided(3).result.total.pence).toBe(75_000);
    expect(decided(2).result.total.pence).toBe(0);
    expect(decided(2).findings).toMatchObject([{ facts: { count: 1, days: { value: 2 } } }]);
  });

  it("caps each incident at the excess by itself", () => {
    const marks = ["a", "b", "c"].map((id) => mark(id, { sizeMm: 500 }));
    const classes = { a: "hirer", b: "hirer", c: "hirer" } as const;
    const estimates = { a: 0, b: 0, c: 0 };
    const made = { ...input(marks, { classes, incidents: { c: "gatepost" } }) };
    const terms = {
      ...made.terms,
      security: { ...made.terms.security, excessPence: 30_000 },
      tariff: { ...made.terms.tariff },
    };
    const { result } = settleHire({ ...made, terms });
    const each = result.lines[0]!.amount.pence;
    expect(result.total.pence).toBe(Math.min(30_000, 2 * each) + Math.min(30_000, each));
    expect(settleHire({ ...made, terms, estimates }).result.total.pence).toBe(0);
  });

  it("comes to the same whatever the order of entry, and every charge has its evidence", () => {
    const many = [
      ...Array.from({ length: 6 }, (_, k) => mark(`m${k}`, { sizeMm: 40 + 90 * k })),
      kit(1),
      reading("fuel", 1, 0.5, "share"),
    ];
    const classes = Object.fromEntries(
      many.flatMap(({ id, kind }) => (kind === "reading" ? [] : [[id, "hirer"]])),
    );
    const anyCost = fc.record({
      partsPence: fc.integer({ min: 0, max: 200_000 }),
      labourPence: fc.integer({ min: 0, max: 90_000 }),
    });
    fc.assert(
      fc.property(
        fc.shuffledSubarray(many, { minLength: many.length }),
        fc.dictionary(fc.constantFrom("m0", "m1", "m2"), anyCost),
        fc.dictionary(fc.constantFrom("m1", "m2", "m3"), fc.constantFrom("one", "two")),
        (order, estimates, incidents) => {
          const more = {
            classes,
            estimates,
            incidents,
            departure: { m0: [photo], m1: [photo], m3: [photo] },
          };
          const one = settle(many, more as Partial<SettlementInput>);
          const other = settle(order, more as Partial<SettlementInput>);
          expect(other.total).toEqual(one.total);
          const byId = (all: typeof one) => [...all.lines].sort((a, b) => (a.id < b.id ? -1 : 1));
          expect(byId(other)).toEqual(byId(one));
          for (const line of one.lines.filter(({ amount }) => amount.pence > 0)) {
            expect(line.evidence.records.length + line.evidence.photographs.length).toBeGreaterThan(0);
          }
          const { excessPence } = testTerms().security;
          const groups = new Set(one.lines.filter(({ capped }) => capped).map(({ incident }) => incident));
          const capped = one.lines
            .filter((line) => line.capped)
            .reduce((sum, { amount }) => sum + amount.pence, 0);
          expect(capped + one.overExcess.pence).toBeLessThanOrEqual(groups.size * excessPence);
        },
      ),
    );
  });
});
