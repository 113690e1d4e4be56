import { type Money, type Party, quoteHire, withRules } from "@setfair/engine";
import type { Store } from "../store/types.ts";
import { asDocument, type DepotDocument } from "./documents.ts";
import { termsOf } from "./hire-data.ts";
import { readRuleBook } from "./rule-book.ts";

/** The price as a quote at home without extras would have it; null where it cannot be priced. */
export async function priceOf(
  store: Store,
  vehicleClass: string,
  asked: { readonly party: Party; readonly from: string; readonly to: string },
  today: string,
): Promise<Money<"GBP"> | null> {
  const terms = await termsOf(store, null, today);
  if (terms === null) return null;
  const depot = asDocument<DepotDocument>((await store.depot.get()).document);
  const input = {
    terms: terms.document,
    vehicleClass,
    from: asked.from,
    to: asked.to,
    today,
    party: asked.party,
    drivers: 1,
    extras: [],
    countries: [depot.country],
  };
  const { result } = withRules(await readRuleBook(store), () => quoteHire(input));
  return result?.total ?? null;
}
