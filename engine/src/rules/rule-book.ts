import type { IsoDate } from "../base/time.ts";
import { addDays } from "../base/years.ts";
import type { Rule } from "./rule.ts";
import { RULES } from "./shipped-rules.ts";

/** The dated rules that the rooms work with. `id` names this set of rules wherever a result is kept. */
export interface RuleBook {
  readonly id: string;
  readonly rules: readonly Rule[];
}

/** What a depot did to a rule: gave its own version of it, read it again, or took its own version back. */
export type RuleChange =
  | { readonly kind: "correct"; readonly rule: Rule }
  | { readonly kind: "confirm"; readonly ruleId: string; readonly readOn: IsoDate; readonly source: string }
  | { readonly kind: "withdraw"; readonly ruleId: string; readonly validFrom: IsoDate };

/** The rules as they ship, unchanged by anybody. */
export const SHIPPED_BOOK: RuleBook = { id: "shipped", rules: RULES };

const LAST_DAY = "9999-12-31";

/**
 * The shipped rules with a depot's own changes laid over them in the order in which they were made. An own version
 * holds from its first day to its last; before and after that the one below holds, so that no day is left without.
 * A rule read again takes the new day and where it was read; what was from memory is then read.
 */
export function composeRuleBook(id: string, changes: readonly RuleChange[]): RuleBook {
  if (changes.length === 0) return { id, rules: RULES };
  const rules = RULES.map((rule): Rule => rule);
  const touched = new Set(
    changes.map((change) => (change.kind === "correct" ? change.rule.id : change.ruleId)),
  );
  const others = rules.filter((rule) => !touched.has(rule.id));
  return { id, rules: [...others, ...[...touched].flatMap((ruleId) => versionsOf(ruleId, changes))] };
}

function versionsOf(ruleId: string, changes: readonly RuleChange[]): readonly Rule[] {
  const own = new Map<IsoDate, Rule>();
  const mine: Rule[] = [];
  let again: { readonly readOn: IsoDate; readonly source: string } | null = null;
  for (const change of changes) {
    if (change.kind === "correct" && change.rule.id === ruleId) {
      own.delete(change.rule.validFrom);
      own.set(change.rule.validFrom, change.rule);
    } else if (change.kind === "withdraw" && change.ruleId === ruleId) own.delete(change.validFrom);
    else if (change.kind === "confirm" && change.ruleId === ruleId) again = change;
  }
  const shipped = RULES.filter((rule) => rule.id === ruleId);
  mine.push(...[...own.values()].map((rule) => withCaseOf(shipped, rule)));
  const laid = mine.reduce(layOver, shipped);
  const read = again;
  return read === null ? laid : laid.map((rule) => readAgain(rule, read));
}

/** A version kept before rules could say when they bind, or on what they turn, takes that from the one that ships. */
function withCaseOf(shipped: readonly Rule[], own: Rule): Rule {
  const under =
    shipped.find((rule) => rule.validFrom <= own.validFrom && own.validFrom <= (rule.validTo ?? LAST_DAY)) ??
    shipped[0];
  if (under === undefined) return own;
  const { when, exempt, binds, notChecked } = under;
  return {
    ...(when === undefined ? {} : { when }),
    ...(exempt === undefined ? {} : { exempt }),
    ...(binds === undefined ? {} : { binds }),
    ...(notChecked === undefined ? {} : { notChecked }),
    ...own,
  };
}

/** One version over others: what they say of its days gives way. */
function layOver(under: readonly Rule[], over: Rule): readonly Rule[] {
  const last = over.validTo;
  const pieces = under.flatMap((rule): readonly Rule[] => {
    const end = rule.validTo ?? LAST_DAY;
    if (end < over.validFrom || (last !== undefined && rule.validFrom > last)) return [rule];
    const before = rule.validFrom < over.validFrom ? [{ ...rule, validTo: addDays(over.validFrom, -1) }] : [];
    const after = last !== undefined && end > last ? [{ ...rule, validFrom: addDays(last, 1) }] : [];
    return [...before, ...after];
  });
  return [...pieces, over];
}

function readAgain(
  rule: Rule,
  { readOn, source }: { readonly readOn: IsoDate; readonly source: string },
): Rule {
  return readOn < rule.readOn ? rule : { ...rule, readOn, source, confidence: "read" };
}

let inForce: RuleBook = SHIPPED_BOOK;

/** The rules that rooms look things up in: those of {@link withRules} while its work runs, else the shipped ones. */
export const rulesInForce = (): RuleBook => inForce;

/**
 * Runs rooms with these rules instead of the shipped ones, and gives back what `work` gives. The rooms stay pure:
 * the same book and the same input give the same answer. Nested calls go back to the outer book.
 * @throws TypeError where `work` answers with a promise: rooms do not wait, and another's rules must not run into it
 */
export function withRules<T>(book: RuleBook, work: () => T): T {
  const outer = inForce;
  inForce = book;
  try {
    const answer = work();
    if (answer instanceof Promise) throw new TypeError("withRules: expected work that does not wait");
    return answer;
  } finally {
    inForce = outer;
  }
}
