import type { Schemas } from "../../../api/client.ts";
import type { HirePageData } from "../use-hire.ts";

export interface DiscountDraft {
  /** id in the terms; null: none is given */
  readonly kind: string | null;
  readonly percent: number;
  readonly reason: string;
}
const NO_DISCOUNT: DiscountDraft = { kind: null, percent: 0, reason: "" };

/** What was given in the quote as it stands. */
export function discountIn(page: HirePageData): DiscountDraft {
  const given = page.quote?.discount ?? null;
  if (given === null || given.percent === undefined) return NO_DISCOUNT;
  return { kind: given.kind, percent: given.percent, reason: given.reason };
}

export function discountOf({ kind, percent, reason }: DiscountDraft): Schemas["Discount"] | null {
  return kind === null || percent === 0 ? null : { kind, percent, reason: reason.trim() };
}
