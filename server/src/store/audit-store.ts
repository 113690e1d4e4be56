import { uuidv7 } from "uuidv7";
import { fromText, pageOf, readCursor, rowsOf, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { AuditTable } from "./tables.ts";
import type { AuditRow, JsonObject, Store } from "./types.ts";

const read = (row: AuditTable): AuditRow => ({
  id: row.id,
  at: row.at,
  by: row.by_id,
  act: row.act,
  about: row.about,
  document: fromText(row.document),
});

export async function writeAudit(
  door: Door,
  by: string,
  act: string,
  about: string,
  document: JsonObject = {},
): Promise<void> {
  await door
    .insert("audit", { id: uuidv7(), at: door.now(), by_id: by, act, about, document: toText(document) })
    .execute();
}

/** Who did what; newest first. */
export function auditStore(door: Door): Store["audit"] {
  return {
    add: ({ by, act, about, document }) => writeAudit(door, by, act, about, document),
    async list(page = {}) {
      const limit = rowsOf(page);
      let query = door
        .from("audit")
        .selectAll()
        .orderBy("id", "desc")
        .limit(limit + 1);
      if (page.about !== undefined) query = query.where("about", "=", page.about);
      if (page.after !== undefined) query = query.where("id", "<", readCursor(page.after)[1]);
      const rows = await query.execute();
      return pageOf(rows, limit, read, (last) => [last.at, last.id]);
    },
  };
}
