import type { Figure } from "../base/figure.ts";
import { figure } from "../base/figure.ts";
import type { IsoDate } from "../base/time.ts";
import { COUNTRY_RULES } from "./country-rules.ts";
import due from "./data/due.json" with { type: "json" };
import licence from "./data/licence.json" with { type: "json" };
import mass from "./data/mass.json" with { type: "json" };
import season from "./data/season.json" with { type: "json" };
import seats from "./data/seats.json" with { type: "json" };
import settlement from "./data/settlement.json" with { type: "json" };
import vat from "./data/vat.json" with { type: "json" };
import type { Rule } from "./rule.ts";

/** Every dated rule that ships, also those switched off; the test beside holds each to the schema. */
export const RULES: readonly Rule[] = [
  ...licence,
  ...mass,
  ...seats,
  ...season,
  ...vat,
  ...due,
  ...settlement,
  ...COUNTRY_RULES,
] as Rule[];

const isOn = (rule: Rule, date: IsoDate) =>
  rule.off === undefined && rule.validFrom <= date && (rule.validTo === undefined || date <= rule.validTo);

/** The rule of this id in force on a day; of several, the one that began last. Undefined where none is in force or it is switched off. */
export function ruleAt(id: string, date: IsoDate): Rule | undefined {
  return RULES.filter((rule) => rule.id === id && isOn(rule, date)).sort((a, b) =>
    a.validFrom < b.validFrom ? 1 : -1,
  )[0];
}

/** A number that a rule in force gives, as a figure with the rule as its source; throws where there is none, which is a hole in the data. */
export function ruleFigure(id: string, date: IsoDate): Figure {
  const rule = ruleAt(id, date);
  if (rule === undefined || typeof rule.value !== "number")
    throw new Error(`no number for rule ${id} on ${date}`);
  return figure(
    rule.value,
    rule.unit,
    "-",
    { readOn: rule.readOn },
    rule.confidence === "memory" ? "from memory" : "declared",
    rule.id,
  );
}

/** The text of a rule in force; throws where there is none. */
export function ruleText(id: string, date: IsoDate): string {
  const rule = ruleAt(id, date);
  if (rule === undefined || typeof rule.value !== "string")
    throw new Error(`no text for rule ${id} on ${date}`);
  return rule.value;
}
