import type { Figure } from "../base/figure.ts";
import { figure } from "../base/figure.ts";
import type { IsoDate } from "../base/time.ts";
import { addDays } from "../base/years.ts";
import type { Rule } from "./rule.ts";
import { rulesInForce } from "./rule-book.ts";

export { RULES } from "./shipped-rules.ts";

/** Whether a rule is applied on a day. */
export const isRuleOn = (rule: Rule, date: IsoDate): boolean =>
  rule.off === undefined && rule.validFrom <= date && (rule.validTo === undefined || date <= rule.validTo);

/** The rule of this id in force on a day; of several, the one that began last. Undefined where none is in force or it is switched off. */
export function ruleAt(id: string, date: IsoDate): Rule | undefined {
  return rulesInForce()
    .rules.filter((rule) => rule.id === id && isRuleOn(rule, date))
    .sort((a, b) => (a.validFrom < b.validFrom ? 1 : -1))[0];
}

/** The versions of a rule that are applied on any day from `first` to `last`, both included, the earliest first. */
export const rulesDuring = (id: string, first: IsoDate, last: IsoDate): readonly Rule[] =>
  rulesInForce()
    .rules.filter((rule) => rule.id === id && rule.off === undefined && isWithin(rule, first, last))
    .sort((a, b) => (a.validFrom < b.validFrom ? -1 : 1));

const isWithin = (rule: Rule, first: IsoDate, last: IsoDate) =>
  rule.validFrom <= last && (rule.validTo === undefined || rule.validTo >= first);

/**
 * The days of a span from which rules are to be read anew: its first day, and each later one on which a rule of this
 * id (with a dot at its end, of any id that begins so) begins to hold or holds no more. What is lawful on each of
 * them is lawful throughout.
 */
export function daysOfChange(id: string, first: IsoDate, last: IsoDate): readonly IsoDate[] {
  const isMeant = (rule: Rule) => (id.endsWith(".") ? rule.id.startsWith(id) : rule.id === id);
  const edges = rulesInForce()
    .rules.filter((rule) => isMeant(rule) && rule.off === undefined)
    .flatMap(({ validFrom, validTo }) =>
      validTo === undefined ? [validFrom] : [validFrom, addDays(validTo, 1)],
    );
  return [...new Set([first, ...edges.filter((day) => day > first && day <= last)])].sort();
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
