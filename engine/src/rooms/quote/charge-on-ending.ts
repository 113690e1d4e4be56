import { type Figure, figure } from "../../base/figure.ts";
import { gbp, type Money, roundPence } from "../../base/money.ts";
import type { IsoDate } from "../../base/time.ts";
import { daysBetween } from "../../base/years.ts";
import type { Terms } from "./types.ts";

export interface EndingInput {
  /** the scale of the quote that was accepted, not today's */
  readonly cancellation: Terms["cancellation"];
  readonly totalPence: number;
  /** paid less refunded so far */
  readonly paidPence: number;
  readonly startsOn: IsoDate;
  readonly endedOn: IsoDate;
}
export interface EndingCharge {
  /** full days before the first day of the hire; 0 on it and after it */
  readonly daysBefore: Figure;
  readonly keepPercent: Figure;
  /** the step of the scale that applies; null where the scale names none, and nothing is kept */
  readonly step: Terms["cancellation"][number] | null;
  readonly keep: Money<"GBP">;
  readonly paid: Money<"GBP">;
  /** to be paid back; never negative */
  readonly refund: Money<"GBP">;
  /** still to be asked for under the scale; never negative */
  readonly owed: Money<"GBP">;
}

/**
 * What a cancelled hire, or one that nobody came for, costs: the step with the most days that is reached. The
 * share is of the whole price; half a penny and over rounds up. keep + refund = paid + owed.
 */
export function chargeOnEnding(input: EndingInput): EndingCharge {
  const { cancellation, totalPence, paidPence, startsOn, endedOn } = input;
  const days = Math.max(0, daysBetween(endedOn, startsOn));
  const step =
    [...cancellation]
      .sort((a, b) => b.atLeastDaysBefore - a.atLeastDaysBefore)
      .find(({ atLeastDaysBefore }) => atLeastDaysBefore <= days) ?? null;
  const percent = step?.keepPercent ?? 0;
  const keep = roundPence((totalPence * percent) / 100);
  return {
    daysBefore: figure(days, "days", "-", { startsOn, endedOn }, "computed"),
    keepPercent: figure(percent, "%", "-", {}, "declared"),
    step,
    keep: gbp(keep),
    paid: gbp(paidPence),
    refund: gbp(Math.max(0, paidPence - keep)),
    owed: gbp(Math.max(0, keep - paidPence)),
  };
}
