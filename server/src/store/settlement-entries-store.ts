import { uuidv7 } from "uuidv7";
import { fromText, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { SettlementEntryTable } from "./tables.ts";
import type { SettlementEntryRow, Store } from "./types.ts";

const read = (row: SettlementEntryTable): SettlementEntryRow => ({
  id: row.id,
  hireId: row.hire_id,
  kind: row.kind as SettlementEntryRow["kind"], // written from a SettlementEntryRow only
  about: row.about,
  document: fromText(row.document),
  by: row.by_id,
  at: row.at,
});

/** Disputes, replies, costs and signatures about settlements, oldest first. Never changed; emptied when the hirer is erased. */
export function settlementEntriesStore(door: Door): Store["settlementEntries"] {
  return {
    async add({ hireId, kind, about, document, by }) {
      const row = {
        id: uuidv7(),
        hire_id: hireId,
        kind,
        about,
        document: toText(document),
        by_id: by,
        at: door.now(),
      };
      await door.insert("settlement_entry", row).execute();
      return { id: row.id, hireId, kind, about, document, by, at: row.at };
    },
    async ofHires(hireIds) {
      if (hireIds.length === 0) return [];
      const rows = await door
        .from("settlement_entry")
        .selectAll()
        .where("hire_id", "in", [...hireIds])
        .orderBy("id")
        .execute();
      return rows.map(read);
    },
  };
}
