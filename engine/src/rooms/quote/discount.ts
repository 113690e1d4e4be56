import { BadInput } from "../../base/bad-input.ts";
import type { Finding } from "../../base/finding.ts";
import { roundPence } from "../../base/money.ts";
import { makeFinding } from "../make-finding.ts";
import type { Discount, QuoteInput } from "./types.ts";

/** What is taken off the nights, whole pence: never more than they cost. */
export function discountPence({ percent, pence }: Discount, nightsPence: number): number {
  const asked = percent === undefined ? (pence ?? 0) : roundPence((nightsPence * percent) / 100);
  return Math.min(asked, nightsPence);
}

/**
 * Refused where the terms let this role give less, or none; the limit is a share of the price of the nights.
 * @throws BadInput unless the discount is one of the terms and either a share or a sum
 */
export function discountFindings(
  { terms, discount }: QuoteInput,
  nightsPence: () => number,
): readonly Finding[] {
  if (discount === undefined) return [];
  const known = terms.discounts ?? [];
  const allowed = known.find(({ id }) => id === discount.kind);
  if (allowed === undefined) {
    const expected =
      known.length === 0
        ? "expected none: the terms name no discount"
        : `expected one of ${known.map(({ id }) => id).join(", ")}`;
    throw new BadInput([{ path: "discount.kind", expected }]);
  }
  if ((discount.percent === undefined) === (discount.pence === undefined))
    throw new BadInput([{ path: "discount", expected: "expected either percent or pence" }]);
  const nights = nightsPence();
  const most = allowed.mostPercent[discount.role] ?? 0;
  const mostPence = roundPence((nights * most) / 100);
  const asked = discount.pence ?? roundPence((nights * (discount.percent ?? 0)) / 100);
  if (asked <= mostPence) return [];
  return [
    makeFinding("money", "quote.discountBeyond", "refuse", "policy", {
      about: discount.kind,
      facts: { kind: discount.kind, role: discount.role, most },
      sources: [terms.id],
      mends: ["quote.smallerDiscount", "quote.askManager"],
    }),
  ];
}
