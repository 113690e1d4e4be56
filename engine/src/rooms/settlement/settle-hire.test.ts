import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { figure } from "../../base/figure.ts";
import { testTerms } from "../quote/test-terms.ts";
import { addWorkingDays, settleHire } from "./settle-hire.ts";
import type { InputDifference } from "./settlement-line.ts";
import { MARK_CLASSES, type SettlementInput, settlementInputSchema } from "./types.ts";

const photo = "b".repeat(64);
const base = {
  checkId: null,
  systemKind: null,
  charge: null,
  outRecords: ["o1"],
  backRecords: ["b1"],
  photographs: [photo],
};
const read = (value: number, unit: string) => ({ ...figure(value, unit, "-", {}, "measured"), inputs: {} });
const reading = (charge: string, out: number, back: number, unit: string): InputDifference => ({
  ...base,
  id: `reading:${charge}`,
  kind: "reading",
  checkId: charge,
  charge,
  out: read(out, unit),
  back: read(back, unit),
  change: read(back - out, unit),
  tolerance: read(0, unit),
});
const mark = (
  id: string,
  more: Partial<Extract<InputDifference, { kind: "mark" }>> = {},
): InputDifference => ({
  ...base,
  id,
  kind: "mark",
  charge: "damage",
  part: "cab.bodyNearside",
  view: "nearside",
  markKind: "scratch",
  sizeMm: 80,
  xShare: 0.4,
  yShare: 0.5,
  backRecords: [`r-${id}`],
  ...more,
});
const kit = (short: number): InputDifference => ({
  ...base,
  id: "count:leads",
  kind: "count",
  checkId: "hookUp.leads",
  systemKind: "hookUp",
  charge: "missingItem",
  expected: 1,
  counted: 1 - short,
  short,
});
const input = (
  differences: readonly InputDifference[],
  change: Partial<SettlementInput> = {},
): SettlementInput => ({
  terms: testTerms(),
  hire: {
    id: "h1",
    from: "2026-05-09T15:00",
    to: "2026-05-16T10:00",
    returnedAt: "2026-05-16T09:50",
    timeZone: "Europe/London",
    allowanceKm: 1680,
    fuel: "diesel",
    fuelTankLitres: 90,
    defLitresPer1000Km: 1.5,
    ageYears: {},
  },
  differences: [...differences],
  classes: {},
  depositPence: 100000,
  disputed: [],
  chargedElsewhere: [],
  ...change,
});
const settle = (differences: readonly InputDifference[], change: Partial<SettlementInput> = {}) =>
  settleHire(input(differences, change)).result;
const amounts = (settlement: ReturnType<typeof settle>) =>
  settlement.lines.map(({ code, amount }) => [code, amount.pence]);

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
    const answer = settleHire(input([mark("m1")]));
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
    const claim = {
      id: "claim.1",
      about: "Bent step",
      cost: { partsPence: 40_000, labourPence: 10_000 },
      ageYears: 4,
      lifeYears: 8,
      incident: "kerb",
      photographs: [photo],
      departure: [photo],
      secondSigned: true,
    };
    const due = (change: Partial<typeof claim>) => settle([], { claims: [{ ...claim, ...change }] });
    expect(due({}).lines).toMatchObject([{ code: "claim", amount: { pence: 30_000 }, incident: "kerb" }]);
    for (const [change, because] of [
      [{ secondSigned: false }, "needsSecondSignature"],
      [{ photographs: [] }, "noEvidence"],
      [{ departure: [] }, "noDeparturePhotograph"],
    ] as const)
      expect(due({ ...change } as Partial<typeof claim>).lines).toMatchObject([
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
