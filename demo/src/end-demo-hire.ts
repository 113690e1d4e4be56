import { chargeOnEnding, type EndingCharge } from "@setfair/engine";
import { type QuoteDocument, toJson } from "@setfair/server";
import type { DemoDepot, PutPart } from "./demo-depot.ts";
import type { DemoHire } from "./demo-hire.ts";

/** How long before its first day a cancelled hire of the demo was cancelled. */
const CANCELLED_DAYS_BEFORE = 12;
/** What is owed back to hirers of the demo goes back after so many days. */
const PAID_BACK_AFTER_DAYS = 10;

interface ToEnd {
  readonly depot: DemoDepot;
  readonly hire: DemoHire;
  readonly hireId: string;
  readonly quote: QuoteDocument;
  readonly put: PutPart;
}

const dayBefore = (date: string, days: number): string =>
  new Date(Date.parse(date) - days * 86_400_000).toISOString().slice(0, 10);

/** A hire of the demo that did not take place: the scale is applied, and what is beyond it was paid back unless that is fresh. */
export async function endDemoHire({ depot, hire, hireId, quote, put }: ToEnd): Promise<void> {
  const { result } = quote.answer;
  if (result === null) return;
  const as = hire.stage === "noShow" ? "noShow" : "cancelled";
  const startsOn = hire.from.slice(0, 10);
  const endedOn = [dayBefore(startsOn, as === "noShow" ? 0 : CANCELLED_DAYS_BEFORE), depot.today].sort()[0]!;
  const charge = chargeOnEnding({
    cancellation: result.cancellation,
    totalPence: result.total.pence,
    paidPence: hire.paid ? result.total.pence : 0,
    startsOn,
    endedOn,
  });
  const at = `${endedOn}T09:00:00.000Z`;
  await put("ending", { as, code: null, at, charge, termsId: result.termsId });
  if (hire.paid && endedOn < dayBefore(depot.today, PAID_BACK_AFTER_DAYS))
    await payBack(depot, hireId, charge, endedOn);
}

async function payBack({ store, by }: DemoDepot, hireId: string, charge: EndingCharge, on: string) {
  const paid = await store.payments.ofHire(hireId);
  const add = async (kind: "refund" | "depositReleased", pence: number, from: "payment" | "depositHeld") => {
    const of = paid.find((row) => row.kind === from)?.id ?? null;
    const document = toJson({ on, method: "card" });
    if (pence > 0) await store.payments.add({ hireId, kind, currency: "GBP", pence, document, by, of });
  };
  await add("refund", charge.refund.pence, "payment");
  await add("depositReleased", paid.find(({ kind }) => kind === "depositHeld")?.pence ?? 0, "depositHeld");
}
