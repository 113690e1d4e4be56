import { figure, gbp, type Quote } from "@setfair/engine";
import type { OpenHire } from "../../api/handlers/change-hire.ts";
import { chooseVehicle } from "../../api/handlers/choose-vehicle.ts";
import { Refusal } from "../../api/refusal.ts";
import type { HireRow, JsonObject, Store } from "../../store/types.ts";
import {
  type AbroadDocument,
  NO_READINESS,
  type PartDocuments,
  type PartName,
  type QuoteDocument,
  toJson,
} from "../documents.ts";
import { type HireData, partOf } from "../hire-data.ts";
import { takeOffTheRoad } from "./off-the-road.ts";
import type { Ask, ChangeDocument } from "./types.ts";

/**
 * The hire on the road comes back with the vehicle it has, and goes on as a hire of its own with the new one:
 * the same people, drivers, trip and load, already paid. Its keys go through the glass like any other.
 */
export async function continueHire(
  hire: OpenHire,
  ask: Ask<"vehicle">,
  abroad: AbroadDocument,
): Promise<JsonObject> {
  const { data, store, by } = hire;
  if (data.row.to <= data.now)
    throw new Refusal("wrongStage", { problems: [{ path: "to", expected: "a hire that has not ended" }] });
  await store.bookings.release(data.row.id);
  await hire.putPart("readiness", {
    ...(partOf(data, "readiness") ?? NO_READINESS),
    keysBackAt: data.now,
  });
  await hire.update({ stage: "returned" });
  await hire.audit("hire.returned", { at: data.nowLocal });
  await takeOffTheRoad(hire, ask);
  const next = await store.hires.create({
    from: data.now,
    to: data.row.to,
    customerId: data.row.customerId,
    stage: "booked",
  });
  await chooseVehicle(store, next, ask.change.vehicleId, by, ask.now);
  await copyParts(store, data, next, abroad, by);
  await store.changes.add({
    hireId: next.id,
    kind: "vehicle",
    document: toJson({
      change: ask.change,
      toDo: [],
      continues: { hireId: data.row.id, reference: data.row.number },
    } satisfies ChangeDocument),
    by,
  });
  await store.audit.add({
    by,
    act: "hire.continues",
    about: next.id,
    document: { reference: data.row.number },
  });
  return { continuedBy: { hireId: next.id, reference: next.number } };
}

const COPIED = ["party", "contact", "drivers", "trip", "load"] as const satisfies readonly PartName[];

async function copyParts(
  store: Store,
  data: HireData,
  next: HireRow,
  abroad: AbroadDocument,
  by: string,
): Promise<void> {
  const put = <Name extends PartName>(name: Name, document: PartDocuments[Name]) =>
    store.hires.putPart(next.id, name, toJson(document), 0, by);
  for (const name of COPIED) {
    const document = partOf(data, name);
    if (document !== null) await put(name, document);
  }
  if (partOf(data, "abroad") !== null) await put("abroad", abroad);
  await put("readiness", NO_READINESS);
  const quote = partOf(data, "quote");
  if (quote !== null) await put("quote", paidAlready(data, quote));
}

/** Nothing more to pay; the allowance of the days that are left, the excess as agreed. */
function paidAlready(data: HireData, quote: QuoteDocument): QuoteDocument {
  const old = quote.answer.result;
  if (old === null) return quote;
  const nights = Math.max(0, Math.round((Date.parse(data.row.to) - Date.parse(data.now)) / 86_400_000));
  const share = old.nights.value === 0 ? 1 : Math.min(1, nights / old.nights.value);
  const nothing = gbp(0);
  const result: Quote = {
    ...old,
    lines: [],
    nights: figure(nights, old.nights.unit, "-", {}, "computed"),
    total: nothing,
    vat: nothing,
    bookingDeposit: nothing,
    balance: nothing,
    securityDeposit: nothing,
    allowanceKm: figure(
      Math.round(old.allowanceKm.value * share),
      old.allowanceKm.unit,
      "-",
      { whole: old.allowanceKm.value, share },
      "computed",
    ),
  };
  return { ...quote, extras: [], frozenId: null, answer: { result, findings: [] } };
}
