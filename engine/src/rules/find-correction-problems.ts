import type { InputProblem } from "../base/bad-input.ts";
import type { Rule } from "./rule.ts";
import { RULES } from "./shipped-rules.ts";

/** Topics whose values are words that rooms and texts know: only a value that some rule of the topic has. */
const WORDS = ["kit", "zone", "toll", "night", "crossing"];
const LISTS = ["lpgFiller"];

/** Days of each month of a leap year, January first. */
const DAYS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Whether it is a yearly span of two days that there are, such as 11-01/04-15. */
function isSpan(value: string): boolean {
  const numbers = /^(\d{2})-(\d{2})\/(\d{2})-(\d{2})$/.exec(value)?.slice(1).map(Number);
  if (numbers === undefined) return false;
  const isDay = (month: number, day: number) => day >= 1 && day <= (DAYS[month - 1] ?? 0);
  const [startMonth = 0, startDay = 0, endMonth = 0, endDay = 0] = numbers;
  return isDay(startMonth, startDay) && isDay(endMonth, endDay);
}

/** The values that a rule's topic knows; null where any value of the right kind will do. */
export function valuesOf(rule: Rule): readonly string[] | null {
  const [topic = ""] = rule.id.split(".");
  if (typeof rule.value !== "string") return null;
  const known = RULES.filter(({ id, value }) => id.startsWith(`${topic}.`) && typeof value === "string");
  const values = [...new Set(known.map(({ value }) => String(value)))].sort();
  return WORDS.includes(topic) || LISTS.includes(topic) ? values : null;
}

/**
 * What is wrong with a depot's own version of a shipped rule: another kind of value, unit, country or case, a word
 * that nothing understands, dates the wrong way round, or a rule that is switched off. Empty where nothing is.
 */
export function findCorrectionProblems(shipped: Rule, own: Rule): readonly InputProblem[] {
  const found: InputProblem[] = [];
  const say = (path: string, expected: string) => found.push({ path, expected });
  if (shipped.off !== undefined)
    say("value", "a rule that is applied; this one is switched off with its reason");
  if (typeof own.value !== typeof shipped.value)
    say("value", `a ${typeof shipped.value} as in the rule that ships`);
  else if (typeof own.value === "number" && !(own.value >= 0 && own.value <= 100_000))
    say("value", "a number from 0 to 100,000");
  const known = valuesOf(shipped);
  if (known !== null && !known.includes(String(own.value))) say("value", `one of ${known.join(" | ")}`);
  if (shipped.unit === "date" && !/^\d{4}-\d{2}-\d{2}$/.test(String(own.value)))
    say("value", "a day YYYY-MM-DD");
  if (shipped.unit === "MM-DD/MM-DD" && own.value !== "none" && !isSpan(String(own.value)))
    say("value", "a yearly span MM-DD/MM-DD with days that there are, or none where nothing is asked");
  if (own.unit !== shipped.unit) say("unit", `the unit of the rule that ships: ${shipped.unit}`);
  if (own.validTo !== undefined && own.validTo < own.validFrom) say("validTo", "a day not before validFrom");
  return found;
}
