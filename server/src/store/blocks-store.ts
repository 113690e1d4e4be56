import { BadInput } from "@setfair/engine";
import { uuidv7 } from "uuidv7";
import { toInstantText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { Store } from "./types.ts";
import { findHolders, readBlock } from "./vehicle-holders.ts";

type NewBlock = Parameters<Store["blocks"]["add"]>[0];

/** Under the same lock as a booking, so that one of two who want the vehicle has it. */
async function addBlock(door: Door, block: NewBlock): ReturnType<Store["blocks"]["add"]> {
  const from = toInstantText(block.from, "from");
  const to = toInstantText(block.to, "to");
  if (from >= to) throw new BadInput([{ path: "to", expected: "an instant after from" }]);
  await door.lock(`vehicle:${block.vehicleId}`);
  // a vehicle may go to the workshop as soon as it is back: the turnaround is not waited for
  const held = await findHolders(door, block.vehicleId, { from, to, until: "to_at" });
  if (held.by.length + held.blocks.length > 0) return { ok: false, why: "taken", ...held };
  const row = {
    id: uuidv7(),
    vehicle_id: block.vehicleId,
    kind: block.kind,
    note: block.note,
    from_at: from,
    to_at: to,
    by_id: block.by,
    at: door.now(),
  };
  await door.insert("vehicle_block", row).execute();
  return {
    ok: true,
    block: readBlock({ ...row, firm_id: door.scope.firmId, depot_id: door.scope.depotId }),
  };
}

/** Periods in which a vehicle is not for hire. */
export function blocksStore(door: Door): Store["blocks"] {
  return {
    add: (block) => door.within((inner) => addBlock(inner, block)),
    remove: (id) =>
      door.within(async (inner) => {
        const row = await inner.from("vehicle_block").selectAll().where("id", "=", id).executeTakeFirst();
        if (row === undefined) return null;
        await inner.remove("vehicle_block").where("id", "=", id).execute();
        return readBlock(row);
      }),
    async between(from, to, vehicleIds) {
      if (vehicleIds?.length === 0) return [];
      let query = door
        .from("vehicle_block")
        .selectAll()
        .where("from_at", "<", toInstantText(to, "to"))
        .where("to_at", ">", toInstantText(from, "from"));
      if (vehicleIds !== undefined) query = query.where("vehicle_id", "in", [...vehicleIds]);
      const rows = await query.orderBy("vehicle_id").orderBy("from_at").orderBy("id").execute();
      return rows.map(readBlock);
    },
  };
}
