import { BODY_STYLES } from "@setfair/engine";
import { Refusal } from "../api/refusal.ts";
import {
  asDocument,
  type DepotDocument,
  NO_READINESS,
  toJson,
  type VehicleDocument,
} from "../desk/documents.ts";
import { checkPeriod } from "../desk/local-time.ts";
import type { CustomerRow, DepotRow, Store } from "../store/types.ts";
import { type DateOrder, readDay } from "./read-days.ts";
import type { Columns, TableRow } from "./read-table.ts";
import { type AcceptedRow, choiceAt, mailAt, neededAt, RowRejected, textAt, wholeAt } from "./take-row.ts";

export const IMPORT_KINDS = ["customers", "vehicles", "hires"] as const;
export type ImportKind = (typeof IMPORT_KINDS)[number];

export interface RowContext {
  readonly store: Store;
  readonly depot: DepotRow;
  readonly today: string;
  readonly by: string;
  readonly dateOrder: DateOrder;
  /** plates that are there already, folded, with the vehicle's id */
  readonly plates: Map<string, string>;
}
interface Kind {
  readonly columns: Columns;
  /** columns that hold days */
  readonly days: readonly string[];
  take(context: RowContext, row: TableRow): Promise<Omit<AcceptedRow, "line">>;
}

export const foldPlate = (text: string): string => text.toUpperCase().replaceAll(/[^A-Z0-9]/g, "");
const same = (a: string, b: string) => a.trim().toLowerCase() === b.trim().toLowerCase();
const digits = (text: string) => text.replaceAll(/\D/g, "");

/** The customer of this name with this address or telephone number. */
async function findCustomer(
  store: Store,
  name: string,
  email: string,
  telephone: string,
): Promise<CustomerRow | null> {
  const { rows } = await store.customers.search(name, { limit: 200 });
  const found = rows.find((row) => {
    const contact = asDocument<{ email?: string; telephone?: string }>(row.document);
    return (
      same(row.name, name) &&
      (same(contact.email ?? "", email) || digits(contact.telephone ?? "") === digits(telephone))
    );
  });
  return found ?? null;
}

function contactAt(row: TableRow) {
  const telephone = neededAt(row, "telephone", 30);
  if (digits(telephone).length < 5) throw new RowRejected(row, "telephone", "a telephone number");
  return { name: neededAt(row, "name", 80), telephone, email: mailAt(row, "email") };
}

async function takeCustomer({ store }: RowContext, row: TableRow) {
  const { name, telephone, email } = contactAt(row);
  const address = textAt(row, "address", 300);
  if ((await findCustomer(store, name, email, telephone)) !== null)
    throw new RowRejected(row, "name", "a customer who is not here yet: one with this name and contact is");
  const document = { telephone, email, ...(address === "" ? {} : { address }) };
  await store.customers.create({ name, document });
  return { title: name, text: `${telephone} · ${email}` };
}

async function takeVehicle({ store, plates, by, dateOrder }: RowContext, row: TableRow) {
  const registration = neededAt(row, "registration", 12).toUpperCase();
  const plate = foldPlate(registration);
  if (plate.length < 2) throw new RowRejected(row, "registration", "a registration number");
  if (plates.has(plate))
    throw new RowRejected(row, "registration", "a vehicle that is not here yet: one with this number is");
  const name = neededAt(row, "name", 60);
  const bodyStyle = choiceAt(row, "bodyStyle", BODY_STYLES, null);
  const mamKg = wholeAt(row, "mamKg", [500, 12_000], 0);
  const registered = textAt(row, "firstRegistered", 20);
  const day = registered === "" ? null : readDay(registered, dateOrder);
  if (registered !== "" && day === null)
    throw new RowRejected(row, "firstRegistered", "a day, such as 2019-03-01");
  const document = {
    name,
    bodyStyle,
    ...(mamKg === 0 ? {} : { mamKg }),
    ...(day === null ? {} : { firstRegistered: day.day }),
  };
  await store.vehicleDrafts.add({ registration, document, by });
  plates.set(plate, "");
  return { title: `${name} ${registration}`, text: bodyStyle };
}

function localAt(row: TableRow, column: string, order: DateOrder): string {
  const found = readDay(neededAt(row, column, 30), order);
  if (found === null) throw new RowRejected(row, column, "a day that exists, such as 2026-07-03 14:00");
  if (found.time === null)
    throw new RowRejected(row, column, "a day with its time, such as 2026-07-03 14:00");
  return `${found.day}T${found.time}`;
}

function periodAt(row: TableRow, { depot, dateOrder }: RowContext) {
  const [from, to] = [localAt(row, "from", dateOrder), localAt(row, "to", dateOrder)];
  try {
    return { from, to, ...{ period: checkPeriod(from, to, depot.timeZone) } };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const [problem] = error.problems;
    const expected =
      problem?.expected.replace(/^expected /, "").replaceAll("`", "") ?? "a period that runs forward";
    throw new RowRejected(row, problem?.path === "from" ? "from" : "to", expected);
  }
}

/** The vehicle of a row, free for the whole period and its turnaround where the hire is booked. */
async function vehicleAt(
  context: RowContext,
  row: TableRow,
  period: { from: string; to: string },
  isBooked: boolean,
) {
  const { store, depot, plates } = context;
  const registration = textAt(row, "registration", 12);
  if (registration === "") {
    if (isBooked) throw new RowRejected(row, "registration", "a vehicle, for a hire that is booked");
    return null;
  }
  const id = plates.get(foldPlate(registration));
  if (id === undefined || id === "")
    throw new RowRejected(row, "registration", "the number of a vehicle that is described at this depot");
  const { turnaroundMinutes } = asDocument<DepotDocument>(depot.document);
  if (isBooked) {
    const ready = new Date(Date.parse(period.to) + turnaroundMinutes * 60_000).toISOString();
    const held = await store.bookings.between(period.from, ready, id);
    const blocked = await store.blocks.between(period.from, period.to, [id]);
    if (held.length + blocked.length > 0)
      throw new RowRejected(row, "registration", "a vehicle that is free then, its turnaround counted");
  }
  return { id, turnaroundMinutes };
}

async function takeHire(context: RowContext, row: TableRow) {
  const { store, by } = context;
  const { name, telephone, email } = contactAt(row);
  const { from, to, period } = periodAt(row, context);
  const adults = wholeAt(row, "adults", [1, 9], null);
  const children = wholeAt(row, "children", [0, 8], 0);
  const dogs = wholeAt(row, "dogs", [0, 6], 0);
  const stage = choiceAt(row, "stage", ["enquiry", "booked"], "enquiry");
  const vehicle = await vehicleAt(context, row, period, stage === "booked");
  const known = await findCustomer(store, name, email, telephone);
  if (known !== null) {
    const { rows } = await store.hires.list({ customerId: known.id, limit: 200 });
    if (rows.some((each) => Date.parse(each.from) === Date.parse(period.from)))
      throw new RowRejected(
        row,
        "from",
        "a hire that is not here yet: this person has one from this moment on",
      );
  }
  const customer = known ?? (await store.customers.create({ name, document: { telephone, email } }));
  const hire = await store.hires.create({ ...period, customerId: customer.id, stage });
  const travellers = [
    ...Array.from({ length: adults }, (_, k) => ({ id: `a${k + 1}`, kind: "adult" as const })),
    ...Array.from({ length: children }, (_, k) => ({ id: `c${k + 1}`, kind: "child" as const })),
  ];
  await store.hires.putPart(hire.id, "party", toJson({ travellers, dogs, experience: "first" }), 0, by);
  await store.hires.putPart(hire.id, "contact", toJson({ wishes: null }), 0, by);
  await store.hires.putPart(hire.id, "readiness", toJson(NO_READINESS), 0, by);
  if (vehicle !== null) await putVehicle(context, row, hire, vehicle, stage === "booked");
  await store.audit.add({ by, act: "hire.imported", about: hire.id, document: { line: row.line } });
  return {
    title: `${name} · ${hire.number}`,
    text: `${from.replace("T", " ")} – ${to.replace("T", " ")} · ${stage}`,
  };
}

async function putVehicle(
  { store }: RowContext,
  row: TableRow,
  hire: { readonly id: string; readonly version: number; readonly from: string; readonly to: string },
  { id, turnaroundMinutes }: { readonly id: string; readonly turnaroundMinutes: number },
  isBooked: boolean,
): Promise<void> {
  const version = (await store.vehicles.versions(id)).at(-1);
  const registration =
    version === undefined ? "" : asDocument<VehicleDocument>(version.document).description.registration;
  const saved = await store.hires.update(hire.id, { vehicleId: id, registration }, hire.version);
  const { from, to } = hire;
  const booked = isBooked
    ? await store.bookings.book({ hireId: hire.id, vehicleId: id, from, to, turnaroundMinutes })
    : null;
  // it was looked at a moment ago, under the same transaction
  if (!saved.ok || booked?.ok === false) throw new Error(`line ${row.line}: the vehicle was taken meanwhile`);
}

/** What can come in as comma-separated values: its columns, and what a row becomes. */
export const IMPORTS: Readonly<Record<ImportKind, Kind>> = {
  customers: {
    columns: { needed: ["name", "telephone", "email"], other: ["address"] },
    days: [],
    take: takeCustomer,
  },
  vehicles: {
    columns: { needed: ["registration", "name", "bodyStyle"], other: ["mamKg", "firstRegistered"] },
    days: ["firstRegistered"],
    take: takeVehicle,
  },
  hires: {
    columns: {
      needed: ["name", "telephone", "email", "from", "to", "adults"],
      other: ["children", "dogs", "registration", "stage"],
    },
    days: ["from", "to"],
    take: takeHire,
  },
};
