import type { z } from "zod";
import type { diarySchema } from "../api/schemas/diary.ts";
import type { DepotRow, HireRow, HireStage, Store } from "../store/types.ts";
import { asDocument, type DepotDocument, type PartDocuments, type VehicleDocument } from "./documents.ts";
import { localOf } from "./local-time.ts";
import { hoursAnswer } from "./opening-hours.ts";

export type DiaryPage = z.input<typeof diarySchema>;

/** What is drawn; enquiries and quotes hold nothing, what was lost or cancelled is gone. */
const DRAWN: readonly HireStage[] = [
  "enquiry",
  "quote",
  "booked",
  "handedOver",
  "onHire",
  "returned",
  "settled",
  "closed",
];
/** No hire is longer (`checkPeriod`), so none that touches a span began before. */
const LONGEST_MS = 367 * 86_400_000;

export interface DiarySpan {
  /** civil dates, the last one included */
  readonly from: string;
  readonly to: string;
  /** instants of the first midnight and of the one after the last day */
  readonly start: string;
  readonly end: string;
}

export async function pinnedOf(store: Store, hireIds: readonly string[]): Promise<ReadonlySet<string>> {
  const parts = await store.hires.partsOf(hireIds, ["diary"]);
  const isPinned = (id: string) => {
    const part = parts.get(id)?.diary;
    return part !== undefined && asDocument<PartDocuments["diary"]>(part.document).pinned;
  };
  return new Set(hireIds.filter(isPinned));
}

export async function readDiary(
  store: Store,
  depot: DepotRow,
  now: Date,
  span: DiarySpan,
): Promise<DiaryPage> {
  const { timeZone } = depot;
  const { hours, turnaroundMinutes, schoolHolidays = [] } = asDocument<DepotDocument>(depot.document);
  const earliest = new Date(Date.parse(span.start) - LONGEST_MS).toISOString();
  const rows = await store.hires.all({
    stages: DRAWN,
    startsFrom: earliest,
    touchesTo: span.end,
    touchesFrom: span.start,
  });
  const booked = rows.filter(({ stage }) => stage === "booked").map(({ id }) => id);
  const pinned = await pinnedOf(store, booked);
  const versions = await store.vehicles.allOn(span.to);
  const blocks = await store.blocks.between(span.start, span.end);
  return {
    from: span.from,
    to: span.to,
    now: localOf(now.toISOString(), timeZone),
    hours: hoursAnswer(hours),
    turnaroundMinutes,
    vehicles: versions
      .map(({ of, document }) => vehicleLine(of, asDocument<VehicleDocument>(document)))
      .sort(byName),
    hires: rows.flatMap((row) => hireBar(row, timeZone, pinned.has(row.id))),
    blocks: blocks.map(({ id, vehicleId, kind, note, from, to }) => ({
      id,
      vehicleId,
      kind,
      note,
      from: localOf(from, timeZone),
      to: localOf(to, timeZone),
    })),
    schoolHolidays: schoolHolidays
      .filter(({ from, to }) => from <= span.to && to >= span.from)
      .map(({ from, to }) => ({ from, to })),
  };
}

const byName = (a: { readonly name: string }, b: { readonly name: string }) =>
  a.name.localeCompare(b.name, "en", { numeric: true });

const vehicleLine = (id: string, { description, dueDates, vehicleClass }: VehicleDocument) => ({
  id,
  name: description.name,
  registration: description.registration,
  vehicleClass,
  due: dueDates.map(({ kind, dueOn }) => ({ kind, dueOn })),
});

function hireBar(row: HireRow, timeZone: string, pinned: boolean): DiaryPage["hires"] {
  if (row.vehicleId === null) return [];
  const { id, number, customerName, stage, vehicleId } = row;
  const period = { from: localOf(row.from, timeZone), to: localOf(row.to, timeZone) };
  return [{ id, reference: number, customer: customerName, stage, vehicleId, ...period, pinned }];
}
