import { BadInput } from "../../base/bad-input.ts";
import type { Figure } from "../../base/figure.ts";
import type { IsoDate } from "../../base/time.ts";
import { addDays, daysBetween } from "../../base/years.ts";
import { ruleAt, ruleFigure } from "../../rules/rule-at.ts";

export const NOTICES = ["privateParking", "council", "police", "toll"] as const;
export type NoticeKind = (typeof NOTICES)[number];

export interface NoticeClock {
  /** days to answer in; null where no rule is known: the notice itself says it */
  readonly days: Figure | null;
  /** the clock starts on the day after it was given, so this is the last day on which the papers may be given */
  readonly lastDay: IsoDate | null;
  /** negative once it is over */
  readonly daysLeft: number | null;
}

/**
 * How long the firm has to pass a notice on. The period begins with the day after that on which the notice was
 * given (Protection of Freedoms Act 2012, Schedule 4, paragraph 13).
 * @throws BadInput where it was given after today
 */
export function noticeClock(asked: {
  readonly kind: NoticeKind;
  readonly givenOn: IsoDate;
  readonly today: IsoDate;
}): NoticeClock {
  const { kind, givenOn, today } = asked;
  if (givenOn > today) throw new BadInput([{ path: "givenOn", expected: `expected a day up to ${today}` }]);
  const id = `notice.gb.${kind}.answerDays`;
  if (ruleAt(id, givenOn) === undefined) return { days: null, lastDay: null, daysLeft: null };
  const days = ruleFigure(id, givenOn);
  const lastDay = addDays(givenOn, days.value);
  return { days, lastDay, daysLeft: daysBetween(today, lastDay) };
}
