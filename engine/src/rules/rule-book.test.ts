import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkSeats } from "../rooms/rules/check-seats.ts";
import { panelVan } from "../vehicle/test-vehicles.ts";
import { citeSource } from "./cite-source.ts";
import { findCorrectionProblems } from "./find-correction-problems.ts";
import type { Rule } from "./rule.ts";
import { RULES, ruleAt, ruleFigure } from "./rule-at.ts";
import { composeRuleBook, type RuleChange, rulesInForce, SHIPPED_BOOK, withRules } from "./rule-book.ts";

const ID = "seats.gb.childRestraint.belowCm";
const shipped = RULES.find(({ id }) => id === ID)!;
const own = (change: Partial<Rule>): Rule => ({
  ...shipped,
  value: 150,
  validFrom: "2026-06-01",
  readOn: "2026-05-20",
  source: "the depot's own reading of the regulations",
  confidence: "read",
  ...change,
});
const correct = (change: Partial<Rule>): RuleChange => ({ kind: "correct", rule: own(change) });
const on = (date: string, changes: readonly RuleChange[]) =>
  withRules(composeRuleBook("own", changes), () => ruleAt(ID, date)?.value);

describe("a depot's rules over those that ship", () => {
  it("an own version holds from its day on, the shipped one before, and the shipped list stays as it is", () => {
    expect(on("2026-05-31", [correct({})])).toBe(shipped.value);
    expect(on("2026-06-01", [correct({})])).toBe(150);
    expect(ruleAt(ID, "2026-06-01")).toBe(shipped);
  });

  it("after the last day of an own version the shipped one holds again", () => {
    const changes = [correct({ validTo: "2026-08-31" })];
    expect(on("2026-08-31", changes)).toBe(150);
    expect(on("2026-09-01", changes)).toBe(shipped.value);
  });

  it("a later own version from the same day takes the earlier one's place, and one taken back is gone", () => {
    expect(on("2026-07-01", [correct({}), correct({ value: 140 })])).toBe(140);
    const back: RuleChange = { kind: "withdraw", ruleId: ID, validFrom: "2026-06-01" };
    expect(on("2026-07-01", [correct({}), back])).toBe(shipped.value);
  });

  it("a rule read again keeps its value and takes the day and the source", () => {
    const again: RuleChange = {
      kind: "confirm",
      ruleId: ID,
      readOn: "2027-03-01",
      source: "gov.uk page, read",
    };
    const rule = withRules(composeRuleBook("own", [again]), () => ruleAt(ID, "2027-03-02"));
    expect(rule).toMatchObject({ value: shipped.value, readOn: "2027-03-01", source: "gov.uk page, read" });
    expect(withRules(composeRuleBook("own", [again]), () => citeSource(ID))).toBe(
      "gov.uk page, read (read 2027-03-01)",
    );
  });

  it("whatever a depot does, every day has exactly one version of the rule", () => {
    const day = fc.integer({ min: 0, max: 700 }).map((n) => {
      const month = String((Math.floor(n / 28) % 12) + 1).padStart(2, "0");
      return `${2026 + Math.floor(n / 336)}-${month}-${String((n % 28) + 1).padStart(2, "0")}`;
    });
    const change = fc.record({
      a: day,
      b: day,
      open: fc.boolean(),
      value: fc.integer({ min: 100, max: 170 }),
    });
    fc.assert(
      fc.property(fc.array(change, { maxLength: 6 }), day, (made, asked) => {
        const changes = made.map(({ a, b, open, value }) => {
          const [from, to] = [a, b].sort() as [string, string];
          return correct({ validFrom: from, value, ...(open ? {} : { validTo: to }) });
        });
        const { rules } = composeRuleBook("own", changes);
        const holding = rules.filter(
          (rule) => rule.id === ID && rule.validFrom <= asked && (rule.validTo ?? "9999") >= asked,
        );
        expect(holding).toHaveLength(1);
        const others = (each: Rule) => each.id !== ID;
        expect(rules.filter(others)).toEqual(RULES.filter(others));
      }),
    );
  });

  it("rooms work with the depot's rules and go back to the shipped ones, also after an error", () => {
    const party = {
      travellers: [{ id: "c", kind: "child" as const, ageYears: 9, heightCm: 140 }],
      dogs: 0,
      experience: "first" as const,
    };
    const ask = () => checkSeats({ vehicle: panelVan(), party, today: "2026-07-01" }).result.childRestraints;
    expect(ask()).toEqual([]);
    expect(withRules(composeRuleBook("own", [correct({})]), ask)).toEqual(["c"]);
    expect(ask()).toEqual([]);
    const book = composeRuleBook("own", []);
    expect(() =>
      withRules(book, () => {
        throw new Error("inside");
      }),
    ).toThrow("inside");
    expect(rulesInForce()).toBe(SHIPPED_BOOK);
    expect(() => withRules(book, () => Promise.resolve(1))).toThrow(/does not wait/);
    expect(ruleFigure(ID, "2026-07-01").value).toBe(shipped.value);
  });
});

describe("an own version kept before rules said when they bind", () => {
  const before = (id: string, validFrom: string) => {
    const { binds, exempt, notChecked, ...rule } = RULES.find((each) => each.id === id)!;
    const changes: RuleChange[] = [{ kind: "correct", rule: { ...rule, validFrom } }];
    return withRules(composeRuleBook("own", changes), () => ruleAt(id, validFrom));
  };

  it("binds as the shipped one does, so that the depot's own days are not read as law by the date", () => {
    expect(before("season.de.winterTyres", "2026-06-01")?.binds).toEqual({
      weather: "wintryRoad",
      usually: "10-01/04-30",
    });
  });

  it("leaves out whom the shipped version of its first day leaves out", () => {
    expect(before("toll.at.box", "2026-06-01")).toMatchObject({
      exempt: { registeredBefore: "2023-12-01" },
      notChecked: ["axles"],
    });
    expect(before("toll.at.box", "2030-06-01")?.exempt).toBeUndefined();
  });
});

describe("what an own version may say", () => {
  const kit = RULES.find(({ id }) => id.startsWith("kit."))!;
  const off = RULES.find(({ off: why }) => why !== undefined)!;

  it("a number for a number, in the same unit", () => {
    expect(findCorrectionProblems(shipped, own({}))).toEqual([]);
    expect(findCorrectionProblems(shipped, own({ value: "150" }))).toMatchObject([{ path: "value" }]);
    expect(findCorrectionProblems(shipped, own({ unit: "m" }))).toMatchObject([{ path: "unit" }]);
    expect(findCorrectionProblems(shipped, own({ validTo: "2026-05-01" }))).toMatchObject([
      { path: "validTo" },
    ]);
  });

  it("a yearly span of days that there are, or none", () => {
    const tyres = RULES.find(({ id }) => id === "season.at.winterTyres")!;
    const problems = (value: string) => findCorrectionProblems(tyres, { ...tyres, value }).length;
    expect(["11-15/03-31", "12-01/02-29", "01-01/12-31", "none"].map(problems)).toEqual([0, 0, 0, 0]);
    expect(["13-01/04-15", "11-31/04-15", "11-01/04-00", "11-01", "winter"].map(problems)).toEqual([
      1, 1, 1, 1, 1,
    ]);
  });

  it("a word that rooms and texts know", () => {
    expect(findCorrectionProblems(kit, { ...kit, value: "sometimes" })).toMatchObject([
      { path: "value", expected: expect.stringContaining("required") },
    ]);
  });

  it("nothing of a rule that is switched off", () => {
    expect(findCorrectionProblems(off, { ...off, value: 4250 })).toMatchObject([{ path: "value" }]);
  });
});
