import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { testTerms } from "../quote/test-terms.ts";
import { settleHire } from "./settle-hire.ts";
import { input, lateClaim, mark, photo, settle } from "./test-settlement.ts";
import type { SettlementInput } from "./types.ts";

describe("costs that nobody knows yet, and what comes to light later", () => {
  const torn = mark("m1", { part: "step", markKind: "tear", charge: null, systemKind: "step" });
  const bare = (change: Partial<SettlementInput> = {}): SettlementInput => {
    const made = input([torn], { classes: { m1: "hirer" }, departure: { m1: [photo] }, ...change });
    return { ...made, terms: { ...made.terms, tariff: { ...made.terms.tariff, damage: [], kit: {} } } };
  };

  it("holds the stated sum and no more while the estimate is awaited, and charges nothing", () => {
    const { result, findings } = settleHire(bare({ awaiting: { m1: 20_000 } }));
    expect(result.lines).toMatchObject([{ because: "awaitsCost", amount: { pence: 0 } }]);
    expect(result).toMatchObject({
      total: { pence: 0 },
      awaiting: { pence: 20_000 },
      depositWithheld: { pence: 20_000 },
      depositReturned: { pence: 80_000 },
    });
    expect(findings.map(({ code }) => code)).toContain("settlement.awaiting");
  });

  it("charges what it then costs, at most what was stated", () => {
    const charged = (partsPence: number) =>
      settleHire(bare({ awaiting: { m1: 20_000 }, estimates: { m1: { partsPence, labourPence: 0 } } }))
        .result;
    expect(charged(15_000)).toMatchObject({ total: { pence: 15_000 }, awaiting: { pence: 0 } });
    expect(charged(35_000).total.pence).toBe(20_000);
  });

  it("never charges more for a line than it was shown with", () => {
    const estimates = { m1: { partsPence: 35_000, labourPence: 0 } };
    expect(settleHire(bare({ estimates, atMost: { m1: 30_000 } })).result.total.pence).toBe(30_000);
  });

  it("takes the age that the depot has shown for a part", () => {
    const made = bare({ estimates: { m1: { partsPence: 90_000, labourPence: 0 } }, partAges: { m1: 2 } });
    const kit = { step: { newPence: 90_000, lifeYears: 8, leastShare: 0.1 } };
    const terms = { ...made.terms, tariff: { ...made.terms.tariff, kit } };
    expect(settleHire({ ...made, terms }).result.total.pence).toBe(67_500);
  });

  it("charges nothing for what was found after the return was signed", () => {
    const { result } = settleHire(input([mark("m1")], { classes: { m1: "hirer" }, foundLate: ["m1"] }));
    expect(result.lines).toMatchObject([{ because: "afterWindow", amount: { pence: 0 } }]);
  });

  it("charges no cleaning that nothing shows", () => {
    const cleaning = { hours: 2, records: [], photographs: [] };
    expect(settle([], { cleaning }).lines).toMatchObject([{ because: "noEvidence", amount: { pence: 0 } }]);
    expect(settle([], { cleaning: { ...cleaning, photographs: [photo] } }).total.pence).toBe(6000);
  });

  it("charges a late claim only with evidence of both sides and a second signature, within its incident's excess", () => {
    const due = (change: Partial<typeof lateClaim>) => settle([], { claims: [{ ...lateClaim, ...change }] });
    expect(due({}).lines).toMatchObject([{ code: "claim", amount: { pence: 30_000 }, incident: "kerb" }]);
    for (const [change, because] of [
      [{ secondSigned: false }, "needsSecondSignature"],
      [{ photographs: [] }, "noEvidence"],
      [{ departure: [] }, "noDeparturePhotograph"],
    ] as const)
      expect(due({ ...change } as Partial<typeof lateClaim>).lines).toMatchObject([
        { because, amount: { pence: 0 } },
      ]);
    const dear = due({ cost: { partsPence: 900_000, labourPence: 0 } });
    expect(dear.total.pence).toBe(testTerms().security.excessPence);
  });

  it("keeps the deposit whole in its parts whatever is charged, disputed and awaited", () => {
    const one = fc.record({
      most: fc.option(fc.integer({ min: 0, max: 200_000 })),
      cost: fc.option(fc.integer({ min: 0, max: 300_000 })),
      disputed: fc.boolean(),
      incident: fc.option(fc.constantFrom("a", "b")),
    });
    fc.assert(
      fc.property(
        fc.array(one, { maxLength: 8 }),
        fc.integer({ min: 0, max: 300_000 }),
        (all, depositPence) => {
          const marks = all.map((_, k) => ({ ...torn, id: `m${k}`, backRecords: [`r${k}`] }));
          const pick = <T>(of: (each: (typeof all)[number]) => T | null) =>
            Object.fromEntries(
              all.flatMap((each, k) => (of(each) === null ? [] : [[`m${k}`, of(each) as T]])),
            );
          const made = bare({
            classes: pick(() => "hirer" as const),
            departure: pick(() => [photo]),
            awaiting: pick(({ most }) => most),
            estimates: pick(({ cost }) => cost),
            incidents: pick(({ incident }) => incident),
            disputed: all.flatMap(({ disputed }, k) => (disputed ? [`m${k}`] : [])),
            depositPence,
          });
          const { result } = settleHire({ ...made, differences: marks });
          const parts = [result.depositKept, result.depositWithheld, result.depositReturned];
          expect(parts.every(({ pence }) => pence >= 0)).toBe(true);
          expect(parts.reduce((sum, { pence }) => sum + pence, 0)).toBe(depositPence);
          const groups = new Set(result.lines.filter(({ capped }) => capped).map(({ incident }) => incident));
          expect(result.total.pence + result.awaiting.pence).toBeLessThanOrEqual(
            groups.size * made.terms.security.excessPence,
          );
          for (const line of result.lines)
            expect(line.amount.pence === 0 || line.awaiting.pence === 0).toBe(true);
        },
      ),
    );
  });
});
