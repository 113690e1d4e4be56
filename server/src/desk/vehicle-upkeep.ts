import type { DueEntry, DueKind } from "@setfair/engine";
import type { DefectRow, Store, UpkeepRow } from "../store/types.ts";
import { asDocument, type VehicleDocument } from "./documents.ts";

/** What the store holds of a duty that was done. */
export interface DoneDocument {
  readonly duty: DueKind;
  readonly who: string;
  readonly reference: string | null;
  readonly km: number | null;
  readonly dueOn: string | null;
  readonly dueKm: number | null;
}
export interface DefectDocument {
  readonly what: string;
  readonly where: string;
  readonly notedBy: string;
  readonly photograph: string | null;
}
export interface VehicleUpkeep {
  readonly entries: readonly UpkeepRow[];
  readonly defects: readonly DefectRow[];
}
export const NO_UPKEEP: VehicleUpkeep = { entries: [], defects: [] };

/** Entries and defects of some vehicles, by vehicle. */
export async function readUpkeep(
  store: Store,
  vehicleIds: readonly string[],
): Promise<ReadonlyMap<string, VehicleUpkeep>> {
  const entries = await store.upkeep.ofVehicles(vehicleIds);
  const defects = await store.defects.ofVehicles(vehicleIds);
  return new Map(
    vehicleIds.map((id) => [
      id,
      {
        entries: entries.filter(({ vehicleId }) => vehicleId === id),
        defects: defects.filter(({ vehicleId }) => vehicleId === id),
      },
    ]),
  );
}

/** The due-date book: for each duty the last entry, and where there is none what stands in the description's papers. */
export function dueBook(document: VehicleDocument, entries: readonly UpkeepRow[]): DueEntry[] {
  const book = new Map<DueKind, DueEntry>();
  for (const { kind, dueOn } of document.dueDates) book.set(kind, { kind, dueOn, dueKm: null });
  for (const entry of entries) {
    if (entry.kind !== "done") continue;
    const { duty, dueOn, dueKm } = asDocument<DoneDocument>(entry.document);
    if (dueOn !== null || dueKm !== null) book.set(duty, { kind: duty, dueOn, dueKm });
    else book.delete(duty);
  }
  return [...book.values()];
}

/** The document with the days of the book in the place of its own. */
export function withBook(document: VehicleDocument, entries: readonly UpkeepRow[]): VehicleDocument {
  if (entries.length === 0) return document;
  const dueDates = dueBook(document, entries).flatMap(({ kind, dueOn }) =>
    dueOn === null ? [] : [{ kind, dueOn }],
  );
  return { ...document, dueDates };
}
