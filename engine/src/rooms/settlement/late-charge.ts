import { daysBetween } from "../../base/years.ts";
import type { SettlementInput } from "./types.ts";

/** Where the terms state none: common practice, no source. */
const USUAL_DAYS = 10;

/** A charge decided later than this many days after the return needs a second person, by the terms of the hire. */
export const secondSignatureDays = ({
  secondSignatureAfterDays = USUAL_DAYS,
}: Pick<SettlementInput["terms"], "secondSignatureAfterDays">): number => secondSignatureAfterDays;

/** True where what was found was put down to the hirer after the window and nobody else has signed for it. */
export function needsSecond(differenceId: string, input: SettlementInput): boolean {
  const decided = input.decidedOn?.[differenceId];
  if (decided === undefined || input.secondSigned?.includes(differenceId) === true) return false;
  return (
    daysBetween(input.hire.returnedAt.slice(0, 10), decided.slice(0, 10)) > secondSignatureDays(input.terms)
  );
}
