import { describe, expect, it } from "vitest";
import { RULES } from "../../rules/rule-at.ts";
import { composeRuleBook, withRules } from "../../rules/rule-book.ts";
import { listRulesToCheck } from "./list-rules-to-check.ts";

const ask = (change: Partial<Parameters<typeof listRulesToCheck>[0]> = {}) =>
  listRulesToCheck({ today: "2026-12-01", olderThanMonths: 12, hires: [], ...change });
const reasons = (id: string, answer = ask()) => answer.find(({ ruleId }) => ruleId === id)?.reasons;

describe("rules that fall due for checking", () => {
  it("names what is from memory or unsettled, and leaves out what was read lately", () => {
    const inForce = RULES.filter(({ off, validTo }) => off === undefined && validTo === undefined);
    const memory = inForce.find(({ confidence }) => confidence === "memory")!;
    const unsettled = inForce.find((rule) => rule.unsettled !== undefined)!;
    expect(reasons(memory.id)).toContain("memory");
    expect(reasons(unsettled.id)).toContain("unsettled");
    expect(reasons("licence.gb.checkCodeDays")).toBeUndefined();
  });

  it("names everything once it is older than the depot wants", () => {
    expect(reasons("licence.gb.checkCodeDays", ask({ today: "2027-11-25" }))).toEqual(["old"]);
    expect(reasons("licence.gb.checkCodeDays", ask({ today: "2027-11-24" }))).toBeUndefined();
    expect(reasons("licence.gb.checkCodeDays", ask({ today: "2027-05-25", olderThanMonths: 6 }))).toEqual([
      "old",
    ]);
  });

  it("wants the rules of a country read again before the first hire that goes there", () => {
    const hires = [
      { country: "AT", from: "2027-07-10" },
      { country: "AT", from: "2027-06-05" },
    ];
    const found = ask({ hires }).find(({ ruleId }) => ruleId === "speed.at.town");
    expect(found).toMatchObject({
      reasons: ["beforeHires"],
      dueOn: "2027-05-08",
      firstHire: "2027-06-05",
      hires: 2,
    });
    expect(reasons("speed.at.town", ask({ hires: [{ country: "AT", from: "2027-01-10" }] }))).toBeUndefined();
  });

  it("names a rule that ends as long before its end as one read is kept for, not years ahead", () => {
    const ends = (today: string) =>
      reasons("toll.at.vignette.older", ask({ today }))?.includes("ends") ?? false;
    expect([ends("2028-01-30"), ends("2028-01-31")]).toEqual([false, true]);
  });

  it("leaves a rule alone once it was read again", () => {
    const inForce = RULES.filter(({ off, validTo }) => off === undefined && validTo === undefined);
    const memory = inForce.find(({ confidence }) => confidence === "memory")!;
    const book = composeRuleBook("own", [
      { kind: "confirm", ruleId: memory.id, readOn: "2026-11-30", source: "read in the source" },
    ]);
    expect(withRules(book, () => reasons(memory.id, ask()))).toBeUndefined();
  });
});
