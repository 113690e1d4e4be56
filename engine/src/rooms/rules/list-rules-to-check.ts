import type { IsoDate } from "../../base/time.ts";
import { addDays, daysBetween, monthsAfter } from "../../base/years.ts";
import type { Rule } from "../../rules/rule.ts";
import { isRuleOn } from "../../rules/rule-at.ts";
import { rulesInForce } from "../../rules/rule-book.ts";

/** Why a rule is to be read again. */
export const RECHECK_REASONS = ["unsettled", "memory", "beforeHires", "old", "ends"] as const;
export type RecheckReason = (typeof RECHECK_REASONS)[number];

export interface RulesToCheckInput {
  readonly today: IsoDate;
  /** a rule last read longer ago than this is old, months; the depot's own policy */
  readonly olderThanMonths: number;
  /** countries of hires that are booked, with the first day there */
  readonly hires: readonly { readonly country: string; readonly from: IsoDate }[];
}
export interface RuleToCheck {
  readonly ruleId: string;
  readonly validFrom: IsoDate;
  readonly country: string;
  readonly reasons: readonly RecheckReason[];
  /** by when it should be read again; in the past where that is overdue */
  readonly dueOn: IsoDate;
  /** the first booked hire that goes there; null where none does */
  readonly firstHire: IsoDate | null;
  readonly hires: number;
}

/** Days before the first booked hire by which the rules of its country should be read again (practice). */
const BEFORE_HIRES_DAYS = 28;
/** A rule read within so many days before that hire need not be read again for it (practice). */
const FRESH_DAYS = 90;

/**
 * The rules that fall due for checking: unsettled or from memory, read longer ago than the depot wants, ending
 * within as long from now, or not read in the last three months before a hire that is booked there. The soonest due first.
 */
export function listRulesToCheck({
  today,
  olderThanMonths,
  hires,
}: RulesToCheckInput): readonly RuleToCheck[] {
  const inForce = rulesInForce().rules.filter((rule) => isRuleOn(rule, today));
  return inForce
    .flatMap((rule) => {
      const booked = hires.filter(({ country, from }) => country === rule.country && from >= today);
      return judge(rule, booked.map(({ from }) => from).sort(), today, olderThanMonths);
    })
    .sort((a, b) => compare(a.dueOn, b.dueOn) || compare(a.ruleId, b.ruleId));
}

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

function judge(rule: Rule, starts: readonly IsoDate[], today: IsoDate, months: number): RuleToCheck[] {
  const old = monthsAfter(rule.readOn, months);
  const first = starts[0] ?? null;
  const before = first === null ? null : addDays(first, -BEFORE_HIRES_DAYS);
  const isStale = first !== null && daysBetween(rule.readOn, first) > FRESH_DAYS;
  const due: [RecheckReason, IsoDate][] = [];
  if (rule.unsettled !== undefined) due.push(["unsettled", before ?? old]);
  if (rule.confidence === "memory") due.push(["memory", before ?? old]);
  if (before !== null && isStale) due.push(["beforeHires", before]);
  if (old <= today) due.push(["old", old]);
  if (rule.validTo !== undefined && rule.validTo <= monthsAfter(today, months))
    due.push(["ends", rule.validTo]);
  if (due.length === 0) return [];
  return [
    {
      ruleId: rule.id,
      validFrom: rule.validFrom,
      country: rule.country,
      reasons: due.map(([reason]) => reason),
      dueOn: due.map(([, on]) => on).sort()[0] ?? old,
      firstHire: first,
      hires: starts.length,
    },
  ];
}
