import { type InsurancePolicy, quoteHire, type Terms, toInstant } from "@setfair/engine";
import { NO_READINESS, type QuoteDocument, type Store, toJson } from "@setfair/server";
import type { DemoHire } from "./hires.ts";

export interface DemoDepot {
  readonly store: Store;
  readonly by: string;
  readonly now: Date;
  readonly today: string;
  readonly timeZone: string;
  readonly turnaroundMinutes: number;
  readonly terms: Terms;
  readonly termsVersionId: string;
  readonly insurance: InsurancePolicy;
}

const VEHICLE_CLASS = "panelVan";

function quoteOf(depot: DemoDepot, hire: DemoHire): QuoteDocument {
  const answer = quoteHire({
    terms: depot.terms,
    vehicleClass: VEHICLE_CLASS,
    from: hire.from,
    to: hire.to,
    today: depot.today,
    party: hire.party,
    drivers: Math.max(1, hire.drivers.length),
    extras: [],
    countries: ["GB"],
  });
  if (answer.result === null) throw new Error(`demo: the terms cannot price ${hire.customer.name}`);
  return {
    at: depot.now.toISOString(),
    acceptedAt: hire.stage === "quote" ? null : depot.now.toISOString(),
    termsVersionId: depot.termsVersionId,
    extras: [],
    answer: { result: answer.result, findings: answer.findings },
    frozenId: null,
  };
}

/** Writes one invented hire as far as it has come. */
export async function putHire(depot: DemoDepot, hire: DemoHire): Promise<void> {
  const { store, by, timeZone } = depot;
  const { name, ...contact } = hire.customer;
  const customer = await store.customers.create({ name, document: toJson(contact) });
  const period = { from: toInstant(hire.from, timeZone), to: toInstant(hire.to, timeZone) };
  const row = await store.hires.create({ ...period, customerId: customer.id, stage: "enquiry" });
  const put = async (part: Parameters<Store["hires"]["putPart"]>[1], document: object) => {
    await store.hires.putPart(row.id, part, toJson(document), 0, by);
  };
  await put("party", hire.party);
  await put("contact", { wishes: hire.wishes === "" ? null : hire.wishes });
  if (hire.drivers.length > 0) await put("drivers", { drivers: hire.drivers });
  if (hire.trip !== null) await put("trip", hire.trip);
  if (hire.load !== null) await put("load", hire.load);
  const isOut = hire.stage === "onHire";
  await put("readiness", { ...NO_READINESS, keysOutAt: isOut ? period.from : null });
  const priced = hire.stage === "quote" || hire.stage === "booked" || isOut;
  const quote = priced ? quoteOf(depot, hire) : null;
  if (quote !== null) await put("quote", quote);
  if (hire.vehicleId !== null) {
    if (hire.stage === "booked" || isOut) {
      const booking = {
        hireId: row.id,
        vehicleId: hire.vehicleId,
        ...period,
        turnaroundMinutes: depot.turnaroundMinutes,
      };
      const answer = await store.bookings.book(booking);
      if (!answer.ok) throw new Error(`demo: ${hire.vehicleId} is taken when ${hire.customer.name} comes`);
    }
  }
  if (hire.paid && quote !== null) await payWhole(depot, row.id, quote);
  const registration = await registrationOf(depot, hire.vehicleId);
  await store.hires.update(
    row.id,
    { stage: hire.stage, vehicleId: hire.vehicleId, registration },
    row.version,
  );
  await store.audit.add({ by, act: "hire.enquired", about: row.id });
}

async function registrationOf({ store, today }: DemoDepot, vehicleId: string | null): Promise<string> {
  if (vehicleId === null) return "";
  const version = await store.vehicles.on(vehicleId, today);
  const description = version?.document.description as { registration?: string } | undefined;
  return description?.registration ?? "";
}

async function payWhole(
  { store, by, today }: DemoDepot,
  hireId: string,
  quote: QuoteDocument,
): Promise<void> {
  const { result } = quote.answer;
  const document = toJson({ on: today, method: "card" });
  await store.payments.add({
    hireId,
    kind: "payment",
    currency: "GBP",
    pence: result.total.pence,
    document,
    by,
  });
  await store.payments.add({
    hireId,
    kind: "depositHeld",
    currency: "GBP",
    pence: result.securityDeposit.pence,
    document,
    by,
  });
}
