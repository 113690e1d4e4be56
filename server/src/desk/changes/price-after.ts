import { figure, gbp, type Quote } from "@setfair/engine";
import type { OpenHire } from "../../api/handlers/change-hire.ts";
import { type QuoteDocument, toJson } from "../documents.ts";
import { freeze } from "../freeze.ts";
import { type HireData, partOf } from "../hire-data.ts";
import { moneyOfHire } from "../money-of-hire.ts";
import { quoteFor } from "../quote-hire.ts";
import { ENGINE_VERSION } from "../version.ts";
import { type Effects, type EffectTask, task } from "./types.ts";

export interface PriceAfter {
  readonly money: Effects["money"];
  /** the quote that stands after the change; null where the one that was accepted stays */
  readonly quote: QuoteDocument | null;
}
const NO_PRICE: PriceAfter = { money: null, quote: null };

const linesOf = (before: number, after: number, ours = 0): NonNullable<Effects["money"]> => ({
  before: gbp(before),
  after: gbp(after),
  hirer: gbp(after - before),
  ours: gbp(ours),
});

/** The hire priced as it would be, under the terms of its own quote; null where it has no quote or cannot be priced. */
function pricedAgain(
  data: HireData,
  after: HireData,
): { kept: QuoteDocument; old: Quote; fresh: Quote } | null {
  const kept = partOf(data, "quote");
  const old = kept?.answer.result ?? null;
  if (kept === null || old === null || after.vehicle === null || after.terms === null) return null;
  const fresh = quoteFor(after, kept.extras, given(kept)).result;
  return fresh === null ? null : { kept, old, fresh };
}

/** What was taken off before is taken off again, as far as the terms let it. */
function given({ discount }: QuoteDocument) {
  if (discount === undefined || discount === null) return undefined;
  const { by: _, ...rest } = discount;
  return rest;
}

const agreed = (data: HireData, kept: QuoteDocument, result: Quote): QuoteDocument => ({
  ...kept,
  at: data.now,
  acceptedAt: kept.acceptedAt === null ? null : data.now,
  answer: { result, findings: [] },
});

/** What the hirer asked for and pays for: longer, more people, one driver less. */
export function priceForHirer(data: HireData, after: HireData): PriceAfter {
  const priced = pricedAgain(data, after);
  if (priced === null) return NO_PRICE;
  const { kept, old, fresh } = priced;
  const money = linesOf(old.total.pence, fresh.total.pence);
  return { money, quote: money.hirer.pence === 0 ? null : agreed(data, kept, fresh) };
}

/** Another vehicle for our reasons: never dearer for the hirer; what it would have cost more is ours. */
export function priceKept(data: HireData, after: HireData): PriceAfter {
  const priced = pricedAgain(data, after);
  if (priced === null) return NO_PRICE;
  const { kept, old, fresh } = priced;
  if (fresh.total.pence >= old.total.pence) {
    const ours = fresh.total.pence - old.total.pence;
    return { money: linesOf(old.total.pence, old.total.pence, ours), quote: null };
  }
  return { money: linesOf(old.total.pence, fresh.total.pence), quote: agreed(data, kept, fresh) };
}

/** Keeps the quote as agreed, frozen as shown where the customer had accepted the one before. */
export async function keepQuote(hire: OpenHire, quote: QuoteDocument | null): Promise<void> {
  if (quote === null) return;
  if (quote.acceptedAt === null) return hire.putPart("quote", quote);
  const { answer } = quote;
  const versions = {
    terms: quote.termsVersionId,
    vehicle: hire.data.vehicle?.version.versionId ?? null,
    rules: hire.data.ruleBook.id,
    engine: ENGINE_VERSION,
  };
  const document = toJson({ answer, versions });
  const frozen = await freeze(hire.store, {
    hireId: hire.data.row.id,
    room: "quote",
    by: hire.by,
    at: hire.data.now,
    document,
  });
  await hire.putPart("quote", { ...quote, frozenId: frozen.id });
}

/** What is then to be paid or given back, by a day; nothing where the price stays. */
export function settleDifference(data: HireData, money: Effects["money"], by: string): readonly EffectTask[] {
  if (money === null || money.hirer.pence === 0) return [];
  const amount = (pence: number) => figure(pence, "pence", "-", {}, "computed");
  if (money.hirer.pence > 0) return [task(data, "payMore", by, { amount: amount(money.hirer.pence) })];
  const over = moneyOfHire(data).paid.pence - money.after.pence;
  return over > 0 ? [task(data, "refund", null, { amount: amount(over) })] : [];
}
