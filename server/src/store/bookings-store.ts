import { BadInput } from "@setfair/engine";
import { toInstantText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { BookingAnswer, BookingRow, Store } from "./types.ts";
import { findHolders, readBooking } from "./vehicle-holders.ts";

/**
 * No vehicle is booked twice: the vehicle is locked first, then what holds it is read, then it is taken.
 * Periods are half open, the turnaround counts to the hire before it. Periods off the road hold it as well.
 */
async function book(door: Door, booking: BookingRow): Promise<BookingAnswer> {
  const from = toInstantText(booking.from, "from");
  const to = toInstantText(booking.to, "to");
  if (from >= to) throw new BadInput([{ path: "to", expected: "an instant after from" }]);
  const minutes = booking.turnaroundMinutes;
  if (!Number.isInteger(minutes) || minutes < 0 || minutes > 10_080) {
    throw new BadInput([{ path: "turnaroundMinutes", expected: "whole minutes, 0 to 10080" }]);
  }
  const ready = new Date(Date.parse(to) + minutes * 60_000).toISOString();
  await door.lock(`vehicle:${booking.vehicleId}`);
  const asked = { from, to, ready, until: "ready_at", butHire: booking.hireId } as const;
  const held = await findHolders(door, booking.vehicleId, asked);
  if (held.by.length + held.blocks.length > 0) return { ok: false, why: "taken", ...held };
  const set = {
    vehicle_id: booking.vehicleId,
    from_at: from,
    to_at: to,
    ready_at: ready,
    turnaround_minutes: minutes,
  };
  await door
    .insert("booking", { hire_id: booking.hireId, ...set })
    .onConflict((on) => on.columns(["firm_id", "depot_id", "hire_id"]).doUpdateSet(set))
    .execute();
  return { ok: true };
}

export function bookingsStore(door: Door): Store["bookings"] {
  return {
    book: (booking) => door.within((inner) => book(inner, booking)),
    async release(hireId) {
      const { numDeletedRows } = await door
        .remove("booking")
        .where("hire_id", "=", hireId)
        .executeTakeFirst();
      return numDeletedRows > 0n;
    },
    async between(from, to, vehicleId) {
      if (typeof vehicleId === "object" && vehicleId.length === 0) return [];
      let query = door
        .from("booking")
        .selectAll()
        .where("from_at", "<", toInstantText(to, "to"))
        .where("ready_at", ">", toInstantText(from, "from"));
      if (typeof vehicleId === "string") query = query.where("vehicle_id", "=", vehicleId);
      else if (vehicleId !== undefined) query = query.where("vehicle_id", "in", [...vehicleId]);
      const rows = await query.orderBy("vehicle_id").orderBy("from_at").orderBy("hire_id").execute();
      return rows.map(readBooking);
    },
    async of(hireId) {
      const row = await door.from("booking").selectAll().where("hire_id", "=", hireId).executeTakeFirst();
      return row === undefined ? null : readBooking(row);
    },
  };
}
