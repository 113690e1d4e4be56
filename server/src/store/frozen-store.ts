import { hashJson } from "@setfair/records";
import { uuidv7 } from "uuidv7";
import { fromText, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { FrozenTable } from "./tables.ts";
import type { FrozenRow, Store } from "./types.ts";

const read = (row: FrozenTable): FrozenRow => ({
  id: row.id,
  hireId: row.hire_id,
  room: row.room,
  document: fromText(row.document),
  hash: row.hash,
  by: row.by_id,
  at: row.at,
});

/** Results as they were shown when someone signed, accepted or paid; never changed. */
export function frozenStore(door: Door): Store["frozen"] {
  const ofHires: Store["frozen"]["ofHires"] = async (hireIds) => {
    if (hireIds.length === 0) return [];
    const rows = await door
      .from("frozen")
      .selectAll()
      .where("hire_id", "in", [...hireIds])
      .orderBy("id")
      .execute();
    return rows.map(read);
  };
  return {
    async add({ hireId, room, document, by }) {
      const row = {
        id: uuidv7(),
        hire_id: hireId,
        room,
        document: toText(document),
        hash: hashJson(document),
        by_id: by,
        at: door.now(),
      };
      await door.insert("frozen", row).execute();
      return read({ ...row, firm_id: door.scope.firmId, depot_id: door.scope.depotId });
    },
    async get(id) {
      const row = await door.from("frozen").selectAll().where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : read(row);
    },
    ofHires,
    ofHire: (hireId) => ofHires([hireId]),
  };
}
