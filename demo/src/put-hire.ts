import { quoteHire, toInstant, type VehicleDescription } from "@setfair/engine";
import { NO_READINESS, type QuoteDocument, toJson } from "@setfair/server";
import type { DemoDepot, PutPart } from "./demo-depot.ts";
import type { DemoCustomer, DemoHire } from "./demo-hire.ts";
import { type DrawnMark, type DrawnRound, drawRound } from "./drawn-photographs.ts";
import { endDemoHire } from "./end-demo-hire.ts";
import { pastUse } from "./history/past-hires.ts";
import { putUse } from "./history/put-uses.ts";
import { settleDemoHire } from "./settle-demo-hire.ts";
import { marksOf, walkedRecords } from "./walked.ts";

const PRICED: readonly DemoHire["stage"][] = [
  "quote",
  "booked",
  "onHire",
  "returned",
  "settled",
  "closed",
  "cancelled",
  "noShow",
];
const WENT: readonly DemoHire["stage"][] = ["onHire", "returned", "settled", "closed"];
const CAME_BACK: readonly DemoHire["stage"][] = ["returned", "settled", "closed"];

function quoteOf(depot: DemoDepot, hire: DemoHire, vehicleClass: string): QuoteDocument {
  // the price was made before the hire began
  const today = [depot.today, hire.from.slice(0, 10)].sort()[0] ?? depot.today;
  const answer = quoteHire({
    terms: depot.terms,
    vehicleClass,
    from: hire.from,
    to: hire.to,
    today,
    party: hire.party,
    drivers: Math.max(1, hire.drivers.length),
    extras: [],
    countries: [
      "GB",
      ...(hire.abroad?.through ?? []),
      ...(hire.trip?.stops ?? []).map(({ place }) => place.country),
    ],
  });
  if (answer.result === null) {
    throw new Error(
      `demo: the terms cannot price ${hire.from} to ${hire.to}: ${answer.findings.map(({ code }) => code).join(", ")}`,
    );
  }
  return {
    at: depot.now.toISOString(),
    acceptedAt: hire.stage === "quote" ? null : depot.now.toISOString(),
    termsVersionId: depot.termsVersionId,
    extras: [],
    answer: { result: answer.result, findings: answer.findings },
    frozenId: null,
  };
}

/** The customer's row; one who came before has theirs already. */
async function customerIdOf({ store, customerIds }: DemoDepot, customer: DemoCustomer): Promise<string> {
  const known = customerIds.get(customer);
  if (known !== undefined) return known;
  const { name, ...contact } = customer;
  const { id } = await store.customers.create({ name, document: toJson(contact) });
  customerIds.set(customer, id);
  return id;
}

/** Writes one invented hire as far as it has come. Hires that took a vehicle must come in the order of their days. */
export async function putHire(depot: DemoDepot, hire: DemoHire): Promise<void> {
  const { store, by, timeZone } = depot;
  const period = { from: toInstant(hire.from, timeZone), to: toInstant(hire.to, timeZone) };
  const customerId = await customerIdOf(depot, hire.customer);
  const row = await store.hires.create({ ...period, customerId, stage: "enquiry" });
  const vehicle = hire.vehicleId === null ? null : (depot.vehicles.get(hire.vehicleId)?.document ?? null);
  const put: PutPart = async (part, document) => {
    await store.hires.putPart(row.id, part, toJson(document), 0, by);
  };
  const quote =
    vehicle !== null && PRICED.includes(hire.stage) ? quoteOf(depot, hire, vehicle.vehicleClass) : null;
  await putParts(put, hire, quote, period);
  await takeVehicle(depot, hire, row.id, period);
  if (hire.paid && quote !== null) await payWhole(depot, row.id, quote, hire);
  if (quote !== null && (hire.stage === "cancelled" || hire.stage === "noShow"))
    await endDemoHire({ depot, hire, hireId: row.id, quote, put });
  if (vehicle !== null && hire.walked) await walk(depot, row.id, hire, vehicle.description, period);
  if (vehicle !== null && quote !== null && (hire.stage === "settled" || hire.stage === "closed")) {
    await settleDemoHire({ depot, hire, hireId: row.id, vehicle: vehicle.description, quote, put });
  }
  const use = pastUse(hire, [...depot.vehicles.values()]);
  if (use !== null) await putUse(depot, use, row.id);
  const registration = vehicle?.description.registration ?? "";
  await store.hires.update(
    row.id,
    { stage: hire.stage, vehicleId: hire.vehicleId, registration },
    row.version,
  );
  await store.audit.add({ by, act: "hire.enquired", about: row.id });
}

interface Period {
  readonly from: string;
  readonly to: string;
}

async function putParts(
  put: PutPart,
  hire: DemoHire,
  quote: QuoteDocument | null,
  period: Period,
): Promise<void> {
  await put("party", hire.party);
  await put("contact", { wishes: hire.wishes === "" ? null : hire.wishes });
  if (hire.drivers.length > 0) await put("drivers", { drivers: hire.drivers });
  if (hire.trip !== null) await put("trip", hire.trip);
  if (hire.abroad !== undefined) await put("abroad", hire.abroad);
  if (hire.load !== null) await put("load", hire.load);
  await put("readiness", {
    ...NO_READINESS,
    keysOutAt: WENT.includes(hire.stage) ? period.from : null,
    keysBackAt: CAME_BACK.includes(hire.stage) ? period.to : null,
  });
  if (quote !== null) await put("quote", quote);
}

/** Takes the vehicle through the store's own guard against double booking; what came back lets it go again. */
async function takeVehicle(depot: DemoDepot, hire: DemoHire, hireId: string, period: Period): Promise<void> {
  const { vehicleId, stage } = hire;
  if (vehicleId === null || (stage !== "booked" && !WENT.includes(stage))) return;
  const { turnaroundMinutes, store } = depot;
  const answer = await store.bookings.book({ hireId, vehicleId, ...period, turnaroundMinutes });
  if (!answer.ok) throw new Error(`demo: ${vehicleId} is taken from ${hire.from} to ${hire.to}`);
  if (CAME_BACK.includes(stage)) depot.over.push(hireId);
}

/** The walk-rounds that a hire of the demo has behind it. */
async function walk(
  depot: DemoDepot,
  hireId: string,
  hire: DemoHire,
  vehicle: VehicleDescription,
  period: { readonly from: string; readonly to: string },
): Promise<void> {
  const rounds = CAME_BACK.includes(hire.stage) ? (["out", "back"] as const) : (["out"] as const);
  const nights = Math.round((Date.parse(period.to) - Date.parse(period.from)) / 86_400_000);
  for (const direction of rounds) {
    const at = new Date(
      Date.parse(direction === "out" ? period.from : period.to) - 40 * 60_000,
    ).toISOString();
    // the one that is still to be settled came back in the rain
    const wet = direction === "back" && hire.stage === "returned" ? ["cab.underside"] : [];
    const signer = hire.customer.name;
    const marks = marksOf(direction, at);
    const shots = depot.photographed.has(hire)
      ? await photograph(depot, { hireId, vehicle, direction, marks })
      : null;
    const records = walkedRecords({ hireId, vehicle, direction, signer, nights, at, wet, marks, shots });
    const refused = (await depot.store.records.append(records)).find(({ ok }) => !ok);
    if (refused !== undefined) throw new Error(`demo: a record was refused, ${JSON.stringify(refused)}`);
  }
}

interface ToPhotograph {
  readonly hireId: string;
  readonly vehicle: VehicleDescription;
  readonly direction: "out" | "back";
  readonly marks: readonly DrawnMark[];
}

/** Draws the photographs of one walk-round and keeps them; null where none are kept. */
async function photograph(
  { keepPhotograph }: DemoDepot,
  { hireId, vehicle, direction, marks }: ToPhotograph,
): Promise<DrawnRound | null> {
  if (keepPhotograph === null) return null;
  const drawn = await drawRound(vehicle, direction, marks);
  for (const { jpeg, sha256 } of [...drawn.sides, ...drawn.marks]) await keepPhotograph(jpeg, sha256, hireId);
  return drawn;
}

async function payWhole(
  { store, by, today }: DemoDepot,
  hireId: string,
  quote: QuoteDocument,
  hire: DemoHire,
): Promise<void> {
  const { result } = quote.answer;
  const on = [today, hire.from.slice(0, 10)].sort()[0] ?? today;
  const add = (kind: "payment" | "depositHeld", pence: number, method: "card" | "cardHold") =>
    store.payments.add({ hireId, kind, currency: "GBP", pence, document: toJson({ on, method }), by });
  await add("payment", result.total.pence, "card");
  // held on the card when the keys go; before, as money
  await add("depositHeld", result.securityDeposit.pence, WENT.includes(hire.stage) ? "cardHold" : "card");
}
