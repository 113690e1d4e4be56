import { checkUpkeep, type DueLine, dampBand } from "@setfair/engine";
import type { z } from "zod";
import type { vehicleUpkeepSchema } from "../api/schemas/upkeep.ts";
import type { DatedVersion, Store } from "../store/types.ts";
import { asDocument, type VehicleDocument } from "./documents.ts";
import { accountNames } from "./names.ts";
import { lastOdometer } from "./upkeep.ts";
import {
  type DefectDocument,
  type DoneDocument,
  dueBook,
  NO_UPKEEP,
  readUpkeep,
  type VehicleUpkeep,
} from "./vehicle-upkeep.ts";

export type VehicleUpkeepPage = z.input<typeof vehicleUpkeepSchema>;
type PageLine = VehicleUpkeepPage["due"][number];

/** Worth a word from here on, days: common practice, no source. */
const SOON_DAYS = 42;
const daysTo = (date: string, today: string) =>
  Math.round((Date.parse(date) - Date.parse(today)) / 86_400_000);

/** The book of one vehicle as it stands today, nearest first. */
export function dueLines(document: VehicleDocument, upkeep: VehicleUpkeep, today: string): PageLine[] {
  const odometer = lastOdometer(upkeep.entries, []);
  const { result } = checkUpkeep({
    vehicle: document.description,
    book: dueBook(document, upkeep.entries),
    from: `${today}T00:00`,
    to: `${today}T23:59`,
    today,
    ...(odometer === null ? {} : { odometer: { readKm: odometer.km, endKm: odometer.km } }),
  });
  return result.due
    .map((line) => pageLine(line, upkeep, today))
    .sort((a, b) => (a.dueOn ?? "9999").localeCompare(b.dueOn ?? "9999"));
}

function pageLine(line: DueLine, { entries }: VehicleUpkeep, today: string): PageLine {
  const { kind, status, source, dueOn, dueKm, state } = line;
  const days = dueOn === null ? null : daysTo(dueOn, today);
  const isOver = state === "lapsed" || state === "lapses";
  const last = entries.findLast(
    (entry) => entry.kind === "done" && asDocument<DoneDocument>(entry.document).duty === kind,
  );
  const done = last === undefined ? null : asDocument<DoneDocument>(last.document);
  return {
    kind,
    status,
    source,
    dueOn,
    dueKm,
    days,
    state:
      state === "missing"
        ? "missing"
        : isOver
          ? "over"
          : days !== null && days <= SOON_DAYS
            ? "soon"
            : "inDate",
    last:
      last === undefined || done === null
        ? null
        : { on: last.on, who: done.who, reference: done.reference, km: done.km },
  };
}

/** Which hirers were told of defects of this vehicle and signed for them, newest first. */
async function toldOf(store: Store, vehicleId: string) {
  const { rows } = await store.hires.list({ vehicleId, order: "newest", limit: 200 });
  const reference = new Map(rows.map(({ id, number }) => [id, number]));
  const told = await store.defects.disclosures([...reference.keys()]);
  return told.toReversed().map(({ defectId, hireId, signer, at }) => ({
    defectId,
    hireId,
    reference: reference.get(hireId) ?? "",
    signer,
    at,
  }));
}

/** Everything of one vehicle that upkeep keeps. */
export async function vehicleUpkeepPage(
  store: Store,
  version: DatedVersion,
  today: string,
): Promise<VehicleUpkeepPage> {
  const upkeep = (await readUpkeep(store, [version.of])).get(version.of) ?? NO_UPKEEP;
  const readings = await store.records.list({ vehicleId: version.of, kind: "reading" });
  const nameOf = await accountNames(store);
  const newest = upkeep.entries.toReversed();
  const of = <Document>(kind: string) =>
    newest
      .filter((entry) => entry.kind === kind)
      .map(({ id, on, document }) => ({ id, on, ...asDocument<Document>(document) }));
  const told = await toldOf(store, version.of);
  const [frost] = of<{ state: string; who: string }>("frost");
  return {
    today,
    odometer: lastOdometer(
      upkeep.entries,
      readings.map(({ record }) => record),
    ),
    due: dueLines(asDocument<VehicleDocument>(version.document), upkeep, today),
    history: of<DoneDocument>("done"),
    damp: of<{ position: string; percent: number; meter: string; weather: string; who: string }>("damp").map(
      (reading) => ({ ...reading, band: dampBand(reading.percent) }),
    ),
    water: of<{ act: string; who: string }>("water"),
    frost: frost === undefined ? null : { on: frost.on, state: frost.state, who: frost.who },
    defects: upkeep.defects.toReversed().map((row) => ({
      id: row.id,
      class: row.class,
      ...asDocument<DefectDocument>(row.document),
      at: row.at,
      hireId: row.hireId,
      told: told.filter(({ defectId }) => defectId === row.id).map(({ defectId: _, ...one }) => one),
      closed: row.closed === null ? null : { ...row.closed, by: nameOf(row.closed.by) },
    })),
  };
}
