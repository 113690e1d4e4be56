import type { FleetVehicle } from "@setfair/engine";
import type { BlockRow, BookingRow } from "../store/types.ts";
import type { VehicleDocument } from "./documents.ts";
import { localOf } from "./local-time.ts";

/** A vehicle with what holds it, as the diary room takes it. */
export function fleetVehicle(
  document: VehicleDocument,
  bookings: readonly BookingRow[],
  timeZone: string,
  blocks: readonly BlockRow[] = [],
): FleetVehicle {
  return {
    vehicle: document.description,
    bookings: bookings.map(({ hireId, from, to }) => ({
      hireId,
      from: localOf(from, timeZone),
      to: localOf(to, timeZone),
    })),
    blocked: blocks.map(({ id, kind, from, to }) => ({
      id,
      kind,
      from: localOf(from, timeZone),
      to: localOf(to, timeZone),
    })),
    dueDates: [...document.dueDates],
    maxDogs: document.maxDogs,
  };
}
