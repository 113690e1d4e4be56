import type { Driver, InsurancePolicy, IsoDate, IsoLocal, Terms } from "@setfair/engine";
import { Refusal } from "../api/refusal.ts";
import type {
  BookingRow,
  CustomerRow,
  DatedVersion,
  DepotRow,
  FrozenRow,
  HirePart,
  HireRow,
  OverrideRow,
  PaymentRow,
  Store,
  StoredRecord,
} from "../store/types.ts";
import {
  asDocument,
  type DepotDocument,
  type PartDocuments,
  type PartName,
  type VehicleDocument,
} from "./documents.ts";
import { dateOf, localOf } from "./local-time.ts";

/** Everything that is stored about one hire, read once; rooms are asked with this alone. */
export interface HireData {
  readonly row: HireRow;
  readonly depot: DepotRow;
  readonly depotDocument: DepotDocument;
  readonly now: string;
  readonly nowLocal: IsoLocal;
  readonly today: IsoDate;
  readonly from: IsoLocal;
  readonly to: IsoLocal;
  readonly customer: CustomerRow | null;
  readonly vehicle: { readonly version: DatedVersion; readonly document: VehicleDocument } | null;
  readonly terms: { readonly version: DatedVersion; readonly document: Terms } | null;
  readonly insurance: { readonly version: DatedVersion; readonly document: InsurancePolicy } | null;
  readonly parts: Partial<Record<string, HirePart>>;
  readonly payments: readonly PaymentRow[];
  readonly overrides: readonly OverrideRow[];
  readonly records: readonly StoredRecord[];
  readonly frozen: readonly FrozenRow[];
  /** what else holds this vehicle around then */
  readonly bookings: readonly BookingRow[];
}

export function partOf<Name extends PartName>(data: HireData, name: Name): PartDocuments[Name] | null {
  const part = data.parts[name];
  return part === undefined ? null : asDocument<PartDocuments[Name]>(part.document);
}
export const driversOf = (data: HireData): readonly Driver[] => partOf(data, "drivers")?.drivers ?? [];

/** Reads one hire whole. Refused as not found where the depot has none of that id. */
export async function readHireData(store: Store, id: string, now: Date): Promise<HireData> {
  const row = await store.hires.get(id);
  if (row === null) throw new Refusal("notFound");
  return readRow(store, row, await store.depot.get(), now);
}

/** Likewise for a row already read. */
export async function readRow(store: Store, row: HireRow, depot: DepotRow, now: Date): Promise<HireData> {
  const instant = now.toISOString();
  const nowLocal = localOf(instant, depot.timeZone);
  const from = localOf(row.from, depot.timeZone);
  const parts = await store.hires.parts(row.id);
  const quote = parts.quote === undefined ? null : asDocument<PartDocuments["quote"]>(parts.quote.document);
  const today = dateOf(nowLocal);
  return {
    row,
    depot,
    depotDocument: asDocument<DepotDocument>(depot.document),
    now: instant,
    nowLocal,
    today,
    from,
    to: localOf(row.to, depot.timeZone),
    customer: row.customerId === null ? null : await store.customers.get(row.customerId),
    vehicle: await vehicleOn(store, row.vehicleId, dateOf(from), today),
    terms: await termsOf(store, quote?.termsVersionId ?? null, today),
    insurance: await insuranceOn(store, today),
    parts,
    payments: await store.payments.ofHire(row.id),
    overrides: await store.overrides.ofHire(row.id),
    records: (await store.records.list({ hireId: row.id })).map(({ record }) => record),
    frozen: await store.frozen.ofHire(row.id),
    bookings:
      row.vehicleId === null
        ? []
        : await store.bookings.between(daysFrom(row.from, -30), daysFrom(row.to, 30), row.vehicleId),
  };
}

const daysFrom = (instant: string, days: number) =>
  new Date(Date.parse(instant) + days * 86_400_000).toISOString();

/** The description in force when the hire begins; today's where none is dated so early. */
async function vehicleOn(
  store: Store,
  id: string | null,
  date: IsoDate,
  today: IsoDate,
): Promise<HireData["vehicle"]> {
  if (id === null) return null;
  const version =
    (await store.vehicles.on(id, date)) ??
    (await store.vehicles.on(id, today)) ??
    (await store.vehicles.versions(id)).at(0) ??
    null;
  return version === null ? null : { version, document: asDocument<VehicleDocument>(version.document) };
}

/** The terms that the quote was made under; today's before there is one. */
export async function termsOf(
  store: Store,
  versionId: string | null,
  today: IsoDate,
): Promise<HireData["terms"]> {
  const version =
    versionId === null ? await store.terms.on("hire", today) : await store.terms.byId(versionId);
  return version === null ? null : { version, document: asDocument<Terms>(version.document) };
}

async function insuranceOn(store: Store, today: IsoDate): Promise<HireData["insurance"]> {
  const version = await store.terms.on("insurance", today);
  return version === null ? null : { version, document: asDocument<InsurancePolicy>(version.document) };
}
