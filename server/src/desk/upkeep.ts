import {
  checkDefects,
  checkUpkeep,
  type Finding,
  type OpenDefect,
  ruleFigure,
  type UpkeepInput,
} from "@setfair/engine";
import type { DefectRow, DisclosureRow, UpkeepRow } from "../store/types.ts";
import { figuresOf } from "./depot-figures.ts";
import { asDocument } from "./documents.ts";
import type { HireData } from "./hire-data.ts";
import { wholeRecords } from "./record-facts.ts";
import { type DefectDocument, type DoneDocument, dueBook } from "./vehicle-upkeep.ts";

const DAY_MS = 86_400_000;

/** The odometer as last read, with the day; from upkeep entries and from walk-rounds. */
export function lastOdometer(
  entries: readonly UpkeepRow[],
  records: HireData["records"],
): { readonly km: number; readonly on: string } | null {
  const done = entries.flatMap(({ kind, on, document }) => {
    const km = kind === "done" ? asDocument<DoneDocument>(document).km : null;
    return km === null ? [] : [{ km, on }];
  });
  const read = wholeRecords(records).flatMap(({ kind, content, deviceTime }) =>
    kind === "reading" && content.checkId === "cab.odometer" && typeof content.value === "number"
      ? [{ km: content.value, on: deviceTime.slice(0, 10) }]
      : [],
  );
  return [...done, ...read].sort((a, b) => (a.on < b.on ? -1 : 1)).at(-1) ?? null;
}

function odometerOf(data: HireData): Pick<UpkeepInput, "odometer"> {
  const last = lastOdometer(data.upkeep.entries, data.records);
  if (last === null) return {};
  const { kmADay } = figuresOf(data.depotDocument);
  const days = Math.max(0, (Date.parse(data.to.slice(0, 10)) - Date.parse(last.on)) / DAY_MS);
  return { odometer: { readKm: last.km, endKm: last.km + Math.round(Math.round(days) * kmADay) } };
}

/** Duties through the end of the hire, with the depot's margin for what the law wants. */
export function dueFindings(data: HireData): readonly Finding[] | null {
  if (data.vehicle === null) return null;
  const { document } = data.vehicle;
  return checkUpkeep({
    vehicle: document.description,
    book: dueBook(document, data.upkeep.entries),
    from: data.from,
    to: data.to,
    today: data.today,
    marginDays: ruleFigure("due.gb.marginDays", data.today).value,
    ...odometerOf(data),
  }).findings;
}

export const openDefects = (
  defects: readonly DefectRow[],
  told: readonly DisclosureRow[],
): readonly OpenDefect[] =>
  defects
    .filter(({ closed }) => closed === null)
    .map((row) => ({
      id: row.id,
      class: row.class,
      what: asDocument<DefectDocument>(row.document).what,
      disclosed: told.some(({ defectId }) => defectId === row.id),
    }));

export function defectFindings(data: HireData): readonly Finding[] | null {
  return data.vehicle === null ? null : checkDefects(openDefects(data.upkeep.defects, data.disclosures));
}
