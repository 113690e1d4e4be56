import { uuidv7 } from "uuidv7";
import { fromText, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { HireChangeTable } from "./tables.ts";
import type { ChangeRow, Store } from "./types.ts";

const read = (row: HireChangeTable): ChangeRow => ({
  id: row.id,
  hireId: row.hire_id,
  kind: row.kind,
  document: fromText(row.document),
  by: row.by_id,
  at: row.at,
});

/** What changed about hires, oldest first. Never changed; emptied when the hirer is erased. */
export function changesStore(door: Door): Store["changes"] {
  return {
    async add({ hireId, kind, document, by }) {
      const row = {
        id: uuidv7(),
        hire_id: hireId,
        kind,
        document: toText(document),
        by_id: by,
        at: door.now(),
      };
      await door.insert("hire_change", row).execute();
      return { id: row.id, hireId, kind, document, by, at: row.at };
    },
    async get(id) {
      const row = await door.from("hire_change").selectAll().where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : read(row);
    },
    async ofHires(hireIds) {
      if (hireIds.length === 0) return [];
      const rows = await door
        .from("hire_change")
        .selectAll()
        .where("hire_id", "in", [...hireIds])
        .orderBy("id")
        .execute();
      return rows.map(read);
    },
  };
}
