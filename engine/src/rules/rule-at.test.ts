import { describe, expect, it } from "vitest";
import { ruleSchema } from "./rule.ts";
import { RULES, ruleAt, ruleFigure } from "./rule-at.ts";

describe("dated rules", () => {
  it("every shipped rule has a value, a validity, a source and the day it was read", () => {
    for (const rule of RULES) expect(ruleSchema.safeParse(rule).error?.issues ?? []).toEqual([]);
  });

  it("no two rules of one id hold on the same day", () => {
    for (const a of RULES) {
      for (const b of RULES) {
        if (a !== b && a.id === b.id)
          expect((a.validTo ?? "9999-12-31") < b.validFrom || (b.validTo ?? "9999-12-31") < a.validFrom).toBe(
            true,
          );
      }
    }
  });

  it("the zero-emission allowance begins on 10 June 2025, not a day before", () => {
    expect(ruleAt("licence.gb.zeroEmission.maxMamKg", "2025-06-09")).toBeUndefined();
    expect(ruleFigure("licence.gb.zeroEmission.maxMamKg", "2025-06-10")).toMatchObject({
      value: 4250,
      unit: "kg",
      source: "licence.gb.zeroEmission.maxMamKg",
    });
  });

  it("the European motor caravan rule is known and switched off, with the reason", () => {
    expect(RULES.find(({ id }) => id === "licence.eu.motorhome.maxMamKg")?.off).toMatch(/not in force/);
    expect(ruleAt("licence.eu.motorhome.maxMamKg", "2030-01-01")).toBeUndefined();
  });

  it("asking for the number of a rule that is not in force is a hole in the data", () => {
    expect(() => ruleFigure("licence.eu.motorhome.maxMamKg", "2026-01-01")).toThrow(/no number for rule/);
  });
});
