import { BadInput } from "../../base/bad-input.ts";
import { gbp, type Money, roundPence } from "../../base/money.ts";
import type { Quote } from "../quote/types.ts";

export const INCIDENT_CAUSES = ["ours", "theirs", "unknown"] as const;
export type IncidentCause = (typeof INCIDENT_CAUSES)[number];

export interface NightsRefund {
  /** the share of the price of the nights that was lost, whoever caused it */
  readonly worth: Money<"GBP">;
  /** what is due now: ours in full, theirs nothing, unknown not decided (null) */
  readonly due: Money<"GBP"> | null;
}

const NIGHT_LINES: readonly string[] = ["nights", "longHire", "longerPeriod"];

/**
 * What nights that could not be used are worth: their even share of what the nights cost in the accepted quote,
 * whole pence, never more than that. Common practice, no source, where the terms do not say it.
 * @throws BadInput where more nights were lost than hired
 */
export function refundNights(
  quote: Pick<Quote, "lines" | "nights">,
  nightsLost: number,
  cause: IncidentCause,
): NightsRefund {
  const nights = quote.nights.value;
  if (!Number.isInteger(nightsLost) || nightsLost < 0 || nightsLost > nights)
    throw new BadInput([{ path: "nightsLost", expected: `expected whole nights, 0 to ${nights}` }]);
  const all = quote.lines
    .filter(({ code }) => NIGHT_LINES.includes(code))
    .reduce((sum, { amount }) => sum + amount.pence, 0);
  const worth = gbp(nights === 0 ? 0 : Math.max(0, roundPence((all * nightsLost) / nights)));
  return { worth, due: cause === "ours" ? worth : cause === "theirs" ? gbp(0) : null };
}
