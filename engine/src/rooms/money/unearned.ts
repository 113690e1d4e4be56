import type { IsoDate } from "../../base/time.ts";
import { daysBetween } from "../../base/years.ts";

export interface EarnedInput {
  /** owed for the hire in all, pence */
  readonly duePence: number;
  /** came in and was not paid back, with what was kept from the deposit */
  readonly paidPence: number;
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly today: IsoDate;
  /** before: the keys are here · out: on hire · over: back, cancelled, not come */
  readonly stage: "before" | "out" | "over";
}

/**
 * How much of what a hirer paid is still theirs, pence: nothing is earned before the keys go, then the price night
 * by night, all of it at the return. What was paid beyond what is due is theirs throughout. Common practice, no
 * source: an accountant may earn it otherwise.
 */
export function unearned(input: EarnedInput): number {
  return Math.max(0, input.paidPence - earned(input));
}

function earned({ stage, duePence, from, to, today }: EarnedInput): number {
  const due = Math.max(0, duePence);
  if (stage === "before") return 0;
  if (stage === "over") return due;
  const nights = Math.max(1, daysBetween(from, to));
  const gone = Math.min(nights, Math.max(0, daysBetween(from, today)));
  return Math.floor((due * gone) / nights);
}
