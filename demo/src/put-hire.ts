import {
  type InsurancePolicy,
  quoteHire,
  type Terms,
  toInstant,
  type VehicleDescription,
} from "@setfair/engine";
import {
  asDocument,
  NO_READINESS,
  type QuoteDocument,
  type Store,
  toJson,
  type VehicleDocument,
} from "@setfair/server";
import type { DemoHire } from "./hires.ts";
import { walkedRecords } from "./walked.ts";

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
  const isBack = hire.stage === "returned";
  const isOut = hire.stage === "onHire" || isBack;
  await put("readiness", {
    ...NO_READINESS,
    keysOutAt: isOut ? period.from : null,
    keysBackAt: isBack ? period.to : null,
  });
  const priced = hire.stage === "quote" || hire.stage === "booked" || isOut;
  const quote = priced ? quoteOf(depot, hire) : null;
  if (quote !== null) await put("quote", quote);
  if (hire.vehicleId !== null) {
    if (hire.stage === "booked" || hire.stage === "onHire") {
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
  const vehicle = await vehicleOf(depot, hire.vehicleId);
  if (vehicle !== null && isOut) await walk(depot, row.id, hire, vehicle, period);
  const registration = vehicle?.registration ?? "";
  await store.hires.update(
    row.id,
    { stage: hire.stage, vehicleId: hire.vehicleId, registration },
    row.version,
  );
  await store.audit.add({ by, act: "hire.enquired", about: row.id });
}

async function vehicleOf(
  { store, today }: DemoDepot,
  vehicleId: string | null,
): Promise<VehicleDescription | null> {
  if (vehicleId === null) return null;
  const version = await store.vehicles.on(vehicleId, today);
  return version === null ? null : asDocument<VehicleDocument>(version.document).description;
}

/** The walk-rounds that a hire of the demo has behind it. */
async function walk(
  { store }: DemoDepot,
  hireId: string,
  hire: DemoHire,
  vehicle: VehicleDescription,
  period: { readonly from: string; readonly to: string },
): Promise<void> {
  const rounds = hire.stage === "returned" ? (["out", "back"] as const) : (["out"] as const);
  for (const direction of rounds) {
    const at = new Date(
      Date.parse(direction === "out" ? period.from : period.to) - 40 * 60_000,
    ).toISOString();
    const records = walkedRecords({ hireId, vehicle, direction, signer: hire.customer.name, at });
    const refused = (await store.records.append(records)).find(({ ok }) => !ok);
    if (refused !== undefined) throw new Error(`demo: a record was refused, ${JSON.stringify(refused)}`);
  }
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
