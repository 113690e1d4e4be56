import type { Quote } from "@setfair/engine";
import type { Schemas } from "../../../api/client.ts";
import type { HirePageData } from "../use-hire.ts";

export interface DiscountDraft {
  /** id in the terms; null: none is given */
  readonly kind: string | null;
  readonly by: "percent" | "pence";
  readonly percent: number;
  /** whole pence */
  readonly pence: number;
  readonly reason: string;
}
const NO_DISCOUNT: DiscountDraft = { kind: null, by: "percent", percent: 0, pence: 0, reason: "" };

/** What was given in the quote as it stands. */
export function discountIn(page: HirePageData): DiscountDraft {
  const given = page.quote?.discount ?? null;
  if (given === null) return NO_DISCOUNT;
  const { kind, reason, percent, pence } = given;
  const by = percent === undefined ? "pence" : "percent";
  return { kind, by, percent: percent ?? 0, pence: pence ?? 0, reason };
}

export function discountOf({ kind, by, percent, pence, reason }: DiscountDraft): Schemas["Discount"] | null {
  const given = by === "percent" ? { percent } : { pence };
  const isNone = kind === null || (by === "percent" ? percent : pence) === 0;
  return isNone ? null : { kind, ...given, reason: reason.trim() };
}

const NIGHT_LINES: readonly string[] = ["nights", "longHire", "longerPeriod"];

/** What the nights of a quote cost before any discount, whole pence; null before there is a quote. */
export function nightsPence(page: HirePageData): number | null {
  const quote = page.quote?.result as Quote | null | undefined;
  const lines = quote?.lines.filter(({ code }) => NIGHT_LINES.includes(code));
  return lines?.reduce((sum, { amount }) => sum + amount.pence, 0) ?? null;
}
