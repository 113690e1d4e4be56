import { uuidv7 } from "uuidv7";
import { toInstantText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { NoteTable } from "./tables.ts";
import type { NoteRow, Store } from "./types.ts";

const read = (row: NoteTable): NoteRow => ({
  id: row.id,
  hireId: row.hire_id,
  kind: row.kind as NoteRow["kind"], // written from a NoteRow only
  text: row.body,
  dueAt: row.due_at,
  doneAt: row.done_at,
  by: row.by_id,
  at: row.at,
});

/** Notes and promises with a day. */
export function notesStore(door: Door): Store["notes"] {
  return {
    async add({ hireId, kind, text, dueAt, by }) {
      const due = dueAt === null ? null : toInstantText(dueAt, "dueAt");
      const row = {
        id: uuidv7(),
        hire_id: hireId,
        kind,
        body: text,
        due_at: due,
        done_at: null,
        by_id: by,
        at: door.now(),
      };
      await door.insert("note", row).execute();
      return { id: row.id, hireId, kind, text, dueAt: due, doneAt: null, by, at: row.at };
    },
    async done(id) {
      const { numUpdatedRows } = await door
        .change("note", { done_at: door.now() })
        .where("id", "=", id)
        .where("done_at", "is", null)
        .executeTakeFirst();
      return numUpdatedRows === 1n;
    },
    async ofHire(hireId) {
      const rows = await door.from("note").selectAll().where("hire_id", "=", hireId).orderBy("id").execute();
      return rows.map(read);
    },
    async open() {
      const rows = await door
        .from("note")
        .selectAll()
        .where("kind", "=", "promise")
        .where("done_at", "is", null)
        .orderBy("due_at")
        .orderBy("id")
        .execute();
      return rows.map(read);
    },
  };
}
