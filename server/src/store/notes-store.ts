import { uuidv7 } from "uuidv7";
import { toInstantText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { NoteTable } from "./tables.ts";
import type { NoteRow, Store } from "./types.ts";

const read = (row: Omit<NoteTable, "firm_id" | "depot_id">): NoteRow => ({
  id: row.id,
  hireId: row.hire_id,
  kind: row.kind as NoteRow["kind"], // written from a NoteRow only
  text: row.body,
  moment: row.moment as NoteRow["moment"], // likewise
  owner: row.owner,
  dueAt: row.due_at,
  doneAt: row.done_at,
  doneBy: row.done_by,
  by: row.by_id,
  at: row.at,
});

/** Notes and promises, each with the moment at which it must reappear. */
export function notesStore(door: Door): Store["notes"] {
  return {
    async add({ hireId, kind, text, moment, owner, dueAt, by }) {
      const row = {
        id: uuidv7(),
        hire_id: hireId,
        kind,
        body: text,
        moment,
        owner,
        due_at: dueAt === null ? null : toInstantText(dueAt, "dueAt"),
        done_at: null,
        done_by: null,
        by_id: by,
        at: door.now(),
      };
      await door.insert("note", row).execute();
      return read(row);
    },
    async get(id) {
      const row = await door.from("note").selectAll().where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : read(row);
    },
    async done(id, by) {
      const { numUpdatedRows } = await door
        .change("note", { done_at: door.now(), done_by: by })
        .where("id", "=", id)
        .where("done_at", "is", null)
        .executeTakeFirst();
      return numUpdatedRows === 1n;
    },
    async reopen(id) {
      const { numUpdatedRows } = await door
        .change("note", { done_at: null, done_by: null })
        .where("id", "=", id)
        .where("done_at", "is not", null)
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
        .where((is) => is.or([is("kind", "=", "promise"), is("moment", "is not", null)]))
        .where("done_at", "is", null)
        .orderBy("due_at")
        .orderBy("id")
        .execute();
      return rows.map(read);
    },
  };
}
