import { deriveVehicle, type VehicleTicket } from "@setfair/engine";
import type { z } from "zod";
import type { vehiclePageSchema, vehicleSummarySchema } from "../api/schemas/vehicles.ts";
import type { DatedVersion, HireRow, Store } from "../store/types.ts";
import { asDocument, type VehicleDocument } from "./documents.ts";
import { knownMarks } from "./known-marks.ts";
import { localOf } from "./local-time.ts";
import { accountNames } from "./names.ts";
import { weigh, weighedDocument } from "./weighed.ts";

export type VehicleSummary = z.input<typeof vehicleSummarySchema>;
export type VehiclePage = z.input<typeof vehiclePageSchema>;
const AWAY: readonly string[] = ["handedOver", "onHire"];

export interface FleetView {
  readonly today: string;
  readonly timeZone: string;
}

/** The last of a vehicle's hires, those to come among them; the soonest first. */
const hiresOf = async (store: Store, vehicleId: string): Promise<readonly HireRow[]> =>
  (await store.hires.list({ vehicleId, order: "newest", limit: 200 })).rows.toReversed();

export async function vehicleSummary(
  store: Store,
  version: DatedVersion,
  view: FleetView,
): Promise<VehicleSummary> {
  const when = { weighedBy: view.today, fittedBy: view.today };
  const { description, dueDates } = await weighedDocument(store, version, when);
  const hires = await hiresOf(store, version.of);
  const next = hires
    .filter(({ stage }) => stage === "booked")
    .sort((a, b) => (a.from < b.from ? -1 : 1))
    .at(0);
  const days = (date: string) => Math.round((Date.parse(date) - Date.parse(view.today)) / 86_400_000);
  const derived = deriveVehicle(description);
  return {
    id: version.of,
    name: description.name,
    registration: description.registration,
    bodyStyle: description.bodyStyle,
    belts: derived.belts.value,
    berths: derived.berths.value,
    mamKg: description.masses.mamKg,
    payloadKg: derived.payload.value,
    fitted: description.systems.map(({ kind }) => kind),
    now: hires.some(({ stage }) => AWAY.includes(stage)) ? "onHire" : "atDepot",
    nextOut:
      next === undefined
        ? null
        : { hireId: next.id, reference: next.number, from: localOf(next.from, view.timeZone) },
    due: [...dueDates]
      .sort((a, b) => (a.dueOn < b.dueOn ? -1 : 1))
      .map(({ kind, dueOn }) => ({ kind, dueOn, days: days(dueOn) })),
  };
}

function newestOf({ versionId, document }: DatedVersion): VehiclePage["newest"] {
  const { description, vehicleClass, maxDogs } = asDocument<VehicleDocument>(document);
  return { versionId, description, vehicleClass, maxDogs };
}

export async function vehiclePage(
  store: Store,
  version: DatedVersion,
  view: FleetView,
): Promise<VehiclePage> {
  const { description, dueDates, maxDogs, vehicleClass } = asDocument<VehicleDocument>(version.document);
  const hires = await hiresOf(store, version.of);
  const versions = await store.vehicles.versions(version.of);
  const tickets = await store.tickets.ofVehicle(version.of);
  const nameOf = await accountNames(store);
  const weighed = weigh(description, tickets, versions, { weighedBy: view.today, fittedBy: view.today });
  return {
    summary: await vehicleSummary(store, version, view),
    description,
    derived: deriveVehicle(weighed.description),
    weighed:
      weighed.ticketId === null
        ? null
        : { ticketId: weighed.ticketId, isOlderThanFitting: weighed.isOlderThanFitting },
    tickets: tickets.map(({ id, document, by, at, withdrawnAt }) => ({
      id,
      ticket: asDocument<VehicleTicket>(document),
      by: nameOf(by),
      at,
      withdrawnAt,
    })),
    findings: [],
    newest: newestOf((await store.vehicles.newest(version.of)) ?? version),
    versions: versions.map(({ versionId, validFrom, createdAt }) => ({
      versionId,
      validFrom,
      at: createdAt,
    })),
    hires: hires.map((row) => ({
      hireId: row.id,
      reference: row.number,
      customer: row.customerName,
      from: localOf(row.from, view.timeZone),
      to: localOf(row.to, view.timeZone),
      stage: row.stage,
    })),
    marks: await knownMarks(store, version.of, null),
    dueDates: [...dueDates],
    vehicleClass,
    maxDogs,
  };
}
