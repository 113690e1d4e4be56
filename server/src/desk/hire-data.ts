import type { Driver, IsoDate, IsoLocal, RuleBook, Terms, UseRates } from "@setfair/engine";
import { Refusal } from "../api/refusal.ts";
import type {
  BlockRow,
  BookingRow,
  ChangeRow,
  CustomerRow,
  DatedVersion,
  DepotRow,
  DisclosureRow,
  FrozenRow,
  HirePart,
  HireRow,
  OverrideRow,
  PaymentRow,
  Store,
  StoredRecord,
} from "../store/types.ts";
import { breathe } from "../threads/breathe.ts";
import {
  asDocument,
  type DepotDocument,
  type PartDocuments,
  type PartName,
  type VehicleDocument,
} from "./documents.ts";
import { type InsuranceOfHire, insuranceOn } from "./insurance-on.ts";
import { dateOf, localOf } from "./local-time.ts";
import { readRuleBook } from "./rule-book.ts";
import { readRates } from "./use/rates.ts";
import { NO_UPKEEP, readUpkeep, type VehicleUpkeep } from "./vehicle-upkeep.ts";
import { weigh } from "./weighed.ts";

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
  readonly insurance: InsuranceOfHire | null;
  /** the dated rules as this depot holds them; rooms are asked within `withRules` */
  readonly ruleBook: RuleBook;
  readonly parts: Partial<Record<string, HirePart>>;
  readonly payments: readonly PaymentRow[];
  readonly overrides: readonly OverrideRow[];
  readonly records: readonly StoredRecord[];
  readonly frozen: readonly FrozenRow[];
  /** what else holds this vehicle around then */
  readonly bookings: readonly BookingRow[];
  /** when this vehicle is off the road around then */
  readonly blocks: readonly BlockRow[];
  /** what returns have taught of the use of this vehicle */
  readonly rates: UseRates;
  /** what was done to this vehicle, and its defects */
  readonly upkeep: VehicleUpkeep;
  /** defects that this hirer was told of */
  readonly disclosures: readonly DisclosureRow[];
  /** what changed since it was booked; `records` and `overrides` are without those that a change made void */
  readonly changes: readonly ChangeRow[];
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
  const [data] = await readRows(store, [row], depot, now);
  if (data === undefined) throw new Error("readRow: one row gives one hire");
  return data;
}

/** How many hires' records come in one answer of the store. */
const AT_ONCE = 50;

/**
 * Likewise for many: one query for each kind of row, not one for each hire. `brief` leaves out all but the
 * vehicle, the party, the quote and the payments: enough for the line of a hire that is over.
 */
export async function readRows(
  store: Store,
  rows: readonly HireRow[],
  depot: DepotRow,
  now: Date,
  brief = false,
): Promise<readonly HireData[]> {
  if (rows.length === 0) return [];
  const data: HireData[] = [];
  const today = dateOf(localOf(now.toISOString(), depot.timeZone));
  const shared = await readShared(store, rows, brief);
  for (let start = 0; start < rows.length; start += AT_ONCE) {
    const some = rows.slice(start, start + AT_ONCE);
    const own = await readOwn(store, some, brief);
    for (const row of some) {
      data.push(await assemble(store, row, { depot, now, today, shared, own }));
      await breathe();
    }
  }
  return data;
}

/** What hires have in common: vehicles, what holds them, the insurance, the people. */
async function readShared(store: Store, rows: readonly HireRow[], brief: boolean) {
  const vehicleIds = [...new Set(rows.flatMap(({ vehicleId }) => vehicleId ?? []))];
  const from = rows.map((row) => row.from).sort()[0] ?? "";
  const to =
    rows
      .map((row) => row.to)
      .sort()
      .at(-1) ?? "";
  const span = [daysFrom(from, -AROUND_DAYS), daysFrom(to, AROUND_DAYS), vehicleIds] as const;
  const only = rows.length === 1 && !brief ? (rows[0]?.customerId ?? null) : null;
  return {
    versions: groupBy(await store.vehicles.versionsOf(vehicleIds), ({ of }) => of),
    tickets: groupBy(await store.tickets.ofVehicles(vehicleIds), ({ vehicleId }) => vehicleId),
    bookings: groupBy(brief ? [] : await store.bookings.between(...span), ({ vehicleId }) => vehicleId),
    blocks: groupBy(brief ? [] : await store.blocks.between(...span), ({ vehicleId }) => vehicleId),
    upkeep: brief ? new Map<string, VehicleUpkeep>() : await readUpkeep(store, vehicleIds),
    insurance: brief ? [] : await store.terms.versions("insurance"),
    ruleBook: await readRuleBook(store),
    ratesOf: await readRates(store),
    terms: new Map<string | null, HireData["terms"]>(),
    // lists show the name that stands in the hire itself
    customer: only === null ? null : await store.customers.get(only),
  };
}
type Shared = Awaited<ReturnType<typeof readShared>>;

/** What belongs to each hire alone. */
async function readOwn(store: Store, rows: readonly HireRow[], brief: boolean) {
  const ids = rows.map(({ id }) => id);
  const changes = brief ? [] : await store.changes.ofHires(ids);
  const isVoid = new Set(changes.flatMap(({ document }) => voidedBy(document)));
  const records = (brief ? [] : await store.records.list({ hireIds: ids })).filter(
    ({ record }) => !isVoid.has(record.id),
  );
  return {
    parts: await store.hires.partsOf(
      ids,
      brief ? ["party", "quote", "settlement", "ending", "money"] : undefined,
    ),
    payments: groupBy(await store.payments.ofHires(ids), ({ hireId }) => hireId),
    overrides: groupBy(
      (brief ? [] : await store.overrides.ofHires(ids)).filter(({ id }) => !isVoid.has(id)),
      ({ hireId }) => hireId,
    ),
    frozen: groupBy(brief ? [] : await store.frozen.ofHires(ids), ({ hireId }) => hireId),
    changes: groupBy(changes, ({ hireId }) => hireId),
    disclosures: groupBy(brief ? [] : await store.defects.disclosures(ids), ({ hireId }) => hireId),
    records: groupBy(
      records.map(({ record }) => record),
      ({ refs }) => refs.hireId ?? "",
    ),
  };
}

interface Pieces {
  readonly depot: DepotRow;
  readonly now: Date;
  readonly today: IsoDate;
  readonly shared: Shared;
  readonly own: Awaited<ReturnType<typeof readOwn>>;
}

async function assemble(store: Store, row: HireRow, pieces: Pieces): Promise<HireData> {
  const { depot, now, today, shared, own } = pieces;
  const from = localOf(row.from, depot.timeZone);
  const parts = own.parts.get(row.id) ?? {};
  const quote = parts.quote === undefined ? null : asDocument<PartDocuments["quote"]>(parts.quote.document);
  const around = <Held extends { readonly from: string; readonly to: string }>(held: readonly Held[]) =>
    held.filter(
      (each) =>
        each.from < daysFrom(row.to, AROUND_DAYS) &&
        // a turnaround is at most a week
        each.to > daysFrom(row.from, -AROUND_DAYS - 7),
    );
  return {
    row,
    depot,
    depotDocument: asDocument<DepotDocument>(depot.document),
    now: now.toISOString(),
    nowLocal: localOf(now.toISOString(), depot.timeZone),
    today,
    from,
    to: localOf(row.to, depot.timeZone),
    customer: shared.customer,
    vehicle:
      vehicleAsItLeft(row, shared.versions.get(row.vehicleId ?? "") ?? [], own.frozen.get(row.id) ?? []) ??
      vehicleOn(shared, row.vehicleId ?? "", dateOf(from), today),
    terms: await termsOnce(store, shared, quote?.termsVersionId ?? null, today),
    insurance: insuranceOn(shared.insurance, {
      first: dateOf(from),
      last: dateOf(localOf(row.to, depot.timeZone)),
      today,
    }),
    ruleBook: shared.ruleBook,
    parts,
    payments: own.payments.get(row.id) ?? [],
    overrides: own.overrides.get(row.id) ?? [],
    // what was seen or signed at another vehicle says nothing of this one
    records: (own.records.get(row.id) ?? []).filter(
      ({ refs }) => refs.vehicleId === undefined || refs.vehicleId === row.vehicleId,
    ),
    frozen: own.frozen.get(row.id) ?? [],
    bookings: around(shared.bookings.get(row.vehicleId ?? "") ?? []),
    blocks: around(shared.blocks.get(row.vehicleId ?? "") ?? []),
    rates: shared.ratesOf(row.vehicleId ?? ""),
    upkeep: shared.upkeep.get(row.vehicleId ?? "") ?? NO_UPKEEP,
    disclosures: own.disclosures.get(row.id) ?? [],
    changes: own.changes.get(row.id) ?? [],
  };
}

/** Records and overrides that a change made void: what was signed, seen or let pass for the vehicle before. */
const voidedBy = ({ voidedRecords, voidedOverrides }: ChangeRow["document"]): readonly string[] =>
  [voidedRecords, voidedOverrides]
    .flatMap((ids) => (Array.isArray(ids) ? ids : []))
    .filter((id): id is string => typeof id === "string");

function groupBy<Row>(rows: readonly Row[], key: (row: Row) => string): ReadonlyMap<string, readonly Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const group = groups.get(key(row));
    if (group === undefined) groups.set(key(row), [row]);
    else group.push(row);
  }
  return groups;
}

/** How far around a hire we look for what else holds its vehicle. */
const AROUND_DAYS = 30;
const daysFrom = (instant: string, days: number) =>
  new Date(Date.parse(instant) + days * 86_400_000).toISOString();

/** Under which the description is frozen when the keys go. */
export const VEHICLE_ROOM = "vehicle";
interface FrozenVehicle {
  readonly versionId: string;
  readonly document: VehicleDocument;
}

/** The description that the keys went out with: what is described or weighed since changes nothing for this hire. */
function vehicleAsItLeft(
  row: HireRow,
  versions: readonly DatedVersion[],
  frozen: readonly FrozenRow[],
): HireData["vehicle"] {
  const kept = frozen.findLast(({ room }) => room === VEHICLE_ROOM);
  if (kept === undefined || row.vehicleId === null) return null;
  const { versionId, document } = asDocument<FrozenVehicle>(kept.document);
  const version = versions.find((each) => each.versionId === versionId);
  return version === undefined ? null : { version, document };
}

/** The description in force when the hire begins; today's, or the first, where none is dated so early. */
function vehicleOn(shared: Shared, id: string, date: IsoDate, today: IsoDate): HireData["vehicle"] {
  const versions = shared.versions.get(id) ?? [];
  const inForce = (on: IsoDate) => versions.filter(({ validFrom }) => validFrom <= on).at(-1);
  const version = inForce(date) ?? inForce(today) ?? versions[0] ?? null;
  if (version === null) return null;
  const document = asDocument<VehicleDocument>(version.document);
  const when = { weighedBy: today, fittedBy: date };
  const { description } = weigh(document.description, shared.tickets.get(id) ?? [], versions, when);
  return { version, document: { ...document, description } };
}

async function termsOnce(store: Store, shared: Shared, versionId: string | null, today: IsoDate) {
  const known = shared.terms.get(versionId);
  if (known !== undefined) return known;
  const terms = await termsOf(store, versionId, today);
  shared.terms.set(versionId, terms);
  return terms;
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
