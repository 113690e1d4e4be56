import { uuidv7 } from "uuidv7";
import { fromText, toDateText, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { WeighbridgeTicketTable } from "./tables.ts";
import type { Store, TicketRow } from "./types.ts";

const read = (row: WeighbridgeTicketTable): TicketRow => ({
  id: row.id,
  vehicleId: row.vehicle_id,
  weighedOn: row.weighed_on,
  document: fromText(row.document),
  by: row.by_id,
  at: row.at,
  withdrawnAt: row.withdrawn_at,
});

/** Weighbridge tickets by vehicle, oldest weighing first; of one day the later written is the later. */
export function ticketsStore(door: Door): Store["tickets"] {
  const ofVehicles = async (vehicleIds: readonly string[]) => {
    if (vehicleIds.length === 0) return [];
    const rows = await door
      .from("weighbridge_ticket")
      .selectAll()
      .where("vehicle_id", "in", [...vehicleIds])
      .orderBy("weighed_on")
      .orderBy("id")
      .execute();
    return rows.map(read);
  };
  return {
    async add({ vehicleId, weighedOn, document, by }) {
      const row = {
        id: uuidv7(),
        vehicle_id: vehicleId,
        weighed_on: toDateText(weighedOn, "weighedOn"),
        document: toText(document),
        by_id: by,
        at: door.now(),
        withdrawn_at: null,
      };
      await door.insert("weighbridge_ticket", row).execute();
      return read({ ...row, firm_id: door.scope.firmId, depot_id: door.scope.depotId });
    },
    ofVehicle: (vehicleId) => ofVehicles([vehicleId]),
    ofVehicles,
    async withdraw(vehicleId, id) {
      const { numUpdatedRows } = await door
        .change("weighbridge_ticket", { withdrawn_at: door.now() })
        .where("id", "=", id)
        .where("vehicle_id", "=", vehicleId)
        .where("withdrawn_at", "is", null)
        .executeTakeFirst();
      return numUpdatedRows === 1n;
    },
  };
}
