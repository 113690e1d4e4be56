import { Refusal } from "../../api/refusal.ts";
import { instantOf } from "../local-time.ts";
import { type Ask, type EffectLine, line, type Plan } from "./types.ts";

type VehicleAsk = Ask<"vehicle">;

/** The vehicle that it had, off the road from now on where that was asked; refused where another hire has it. */
export async function takeOffTheRoad(
  { store, by, data: { row, depot } }: Parameters<Plan["write"]>[0],
  { change, data }: VehicleAsk,
): Promise<void> {
  if (change.offTheRoadTo === null || row.vehicleId === null) return;
  const to = instantOf(change.offTheRoadTo, depot.timeZone, "offTheRoadTo");
  const added = await store.blocks.add({
    vehicleId: row.vehicleId,
    kind: "repair",
    note: change.reason,
    from: data.now,
    to,
    by,
  });
  if (!added.ok)
    throw new Refusal("taken", {
      problems: [{ path: "offTheRoadTo", expected: "a time before the next hire of that vehicle" }],
    });
}

/** Why the vehicle that it had cannot be taken off the road for so long. */
export async function offRoadStops({ store, data, change }: VehicleAsk): Promise<readonly EffectLine[]> {
  if (change.offTheRoadTo === null || data.row.vehicleId === null) return [];
  const { timeZone } = data.depot;
  const to = instantOf(change.offTheRoadTo, timeZone, "offTheRoadTo");
  if (to <= data.now) return [line("offTheRoadInThePast")];
  const held = (await store.bookings.between(data.now, to, data.row.vehicleId)).filter(
    (booking) => booking.hireId !== data.row.id && booking.to > data.now && booking.from < to,
  );
  const off = await store.blocks.between(data.now, to, [data.row.vehicleId]);
  const count = held.length + off.length;
  return count === 0 ? [] : [line("offTheRoadTaken", { count, to: change.offTheRoadTo })];
}
