import type { BlockKind } from "@setfair/engine";
import type { Door } from "./door.ts";
import type { BookingTable, VehicleBlockTable } from "./tables.ts";
import type { BlockRow, BookingRow } from "./types.ts";

export const readBooking = (row: BookingTable): BookingRow => ({
  hireId: row.hire_id,
  vehicleId: row.vehicle_id,
  from: row.from_at,
  to: row.to_at,
  turnaroundMinutes: row.turnaround_minutes,
});

export const readBlock = (row: VehicleBlockTable): BlockRow => ({
  id: row.id,
  vehicleId: row.vehicle_id,
  kind: row.kind as BlockKind, // written from a BlockKind only
  note: row.note,
  from: row.from_at,
  to: row.to_at,
  by: row.by_id,
  at: row.at,
});

export interface Asked {
  /** instants as the tables hold them */
  readonly from: string;
  readonly to: string;
  /** the end of the period asked for with its turnaround; `to` where left out */
  readonly ready?: string;
  /** until when another hire holds the vehicle: with its turnaround, or till it is back */
  readonly until: "ready_at" | "to_at";
  /** this hire does not hold it against itself */
  readonly butHire?: string;
}

/** What holds a vehicle within a period. Ask after the vehicle was locked, within the transaction that takes it. */
export async function findHolders(
  door: Door,
  vehicleId: string,
  asked: Asked,
): Promise<{ readonly by: readonly BookingRow[]; readonly blocks: readonly BlockRow[] }> {
  let bookings = door
    .from("booking")
    .selectAll()
    .where("vehicle_id", "=", vehicleId)
    .where("from_at", "<", asked.ready ?? asked.to)
    .where(asked.until, ">", asked.from);
  if (asked.butHire !== undefined) bookings = bookings.where("hire_id", "!=", asked.butHire);
  const blocks = door
    .from("vehicle_block")
    .selectAll()
    .where("vehicle_id", "=", vehicleId)
    .where("from_at", "<", asked.to)
    .where("to_at", ">", asked.from);
  return {
    by: (await bookings.orderBy("from_at").execute()).map(readBooking),
    blocks: (await blocks.orderBy("from_at").execute()).map(readBlock),
  };
}
