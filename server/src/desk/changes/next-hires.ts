import type { Party } from "@setfair/engine";
import type { BookingRow, HireRow, Store } from "../../store/types.ts";
import { vehiclesFor } from "../can-take.ts";
import { pinnedOf } from "../diary-page.ts";
import { asDocument, type CustomerDocument } from "../documents.ts";
import type { HireData } from "../hire-data.ts";
import { localOf } from "../local-time.ts";
import type { EffectLine, Person } from "./types.ts";

export interface NextHire {
  readonly row: HireRow;
  readonly booking: BookingRow;
}

/** Hires booked on this vehicle that begin in [from, to), the first first; the hire itself is not among them. */
export async function nextHires(
  store: Store,
  data: HireData,
  span: { readonly from: string; readonly to: string },
): Promise<readonly NextHire[]> {
  if (data.row.vehicleId === null || span.to <= span.from) return [];
  const bookings = await store.bookings.between(span.from, span.to, data.row.vehicleId);
  const later = bookings
    .filter(({ hireId, from }) => hireId !== data.row.id && from >= span.from)
    .sort((a, b) => (a.from < b.from ? -1 : 1));
  const found: NextHire[] = [];
  for (const booking of later) {
    const row = await store.hires.get(booking.hireId);
    if (row !== null) found.push({ row, booking });
  }
  return found;
}

const MOST_OFFERS = 4;

/** Somebody whom it touches, with the vehicles that their hire could go to instead. */
export async function personOf(
  { store, data, now }: { readonly store: Store; readonly data: HireData; readonly now: Date },
  row: HireRow,
  said: EffectLine,
  withOffers = false,
): Promise<Person> {
  const customer = row.customerId === null ? null : await store.customers.get(row.customerId);
  const { telephone = "" } = asDocument<Partial<CustomerDocument>>(customer?.document ?? {});
  return {
    hireId: row.id,
    reference: row.number,
    customer: row.customerName,
    telephone,
    ...said,
    offers: withOffers ? await offersFor(store, data, now, row) : [],
  };
}

async function offersFor(store: Store, data: HireData, now: Date, row: HireRow): Promise<Person["offers"]> {
  const party = await store.hires.part(row.id, "party");
  const isPinned = (await pinnedOf(store, [row.id])).has(row.id);
  if (party === null || isPinned || row.stage !== "booked") return [];
  const { timeZone } = data.depot;
  const found = await vehiclesFor(store, data.depot, now, {
    party: asDocument<Party>(party.document),
    from: localOf(row.from, timeZone),
    to: localOf(row.to, timeZone),
    hireId: row.id,
  });
  return found
    .filter(({ id, answer }) => id !== row.vehicleId && answer.possible)
    .slice(0, MOST_OFFERS)
    .map(({ id, document: { description } }) => ({
      vehicleId: id,
      name: description.name,
      registration: description.registration,
    }));
}
