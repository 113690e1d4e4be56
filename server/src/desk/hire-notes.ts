import type { z } from "zod";
import type { hireNotesSchema, noteSchema } from "../api/schemas/notes.ts";
import type { HireRow, NoteRow, Store } from "../store/types.ts";
import { asDocument, type PartDocuments } from "./documents.ts";
import { dateOf, localOf } from "./local-time.ts";

type Note = z.input<typeof noteSchema>;

const BEFORE: readonly string[] = ["enquiry", "quote", "booked"];

interface Place {
  readonly timeZone: string;
  readonly today: string;
}

/** The day on which a note reappears: the day before the keys, the day of the keys, that of the return, or its own. */
function dayOfNote(note: NoteRow, row: HireRow, timeZone: string): string | null {
  const day = (instant: string) => dateOf(localOf(instant, timeZone));
  switch (note.moment) {
    case "preparing":
      return day(new Date(Date.parse(row.from) - 86_400_000).toISOString());
    case "counter":
      return day(row.from);
    case "return":
      return day(row.to);
    default:
      return note.dueAt === null ? null : day(note.dueAt);
  }
}

/** Whether its moment has come: by its day, and for the three moments of the hire by the hire's stage as well. */
export function isNoteDue(note: NoteRow, row: HireRow, { timeZone, today }: Place): boolean {
  if (note.doneAt !== null) return false;
  const on = dayOfNote(note, row, timeZone);
  if (on === null || on > today) return false;
  if (note.moment === "preparing" || note.moment === "counter") return BEFORE.includes(row.stage);
  return note.moment !== "return" || !BEFORE.includes(row.stage);
}

export function noteAnswer(note: NoteRow, row: HireRow, place: Place, nameOf: (id: string) => string): Note {
  const { id, hireId, kind, text, moment, owner, by, at, doneAt, doneBy } = note;
  return {
    id,
    hireId,
    kind,
    text,
    moment,
    on: dayOfNote(note, row, place.timeZone),
    owner: owner === null ? null : { id: owner, name: nameOf(owner) },
    by: nameOf(by),
    at,
    done: doneAt === null ? null : { at: doneAt, by: nameOf(doneBy ?? "") },
    isDue: isNoteDue(note, row, place),
  };
}

/** The notes of a hire, those whose moment has come first, then by their day; ticked ones last. */
export async function hireNotes(
  store: Store,
  row: HireRow,
  now: Date,
): Promise<z.input<typeof hireNotesSchema>> {
  const { timeZone } = await store.depot.get();
  const place = { timeZone, today: dateOf(localOf(now.toISOString(), timeZone)) };
  const people = (await store.accounts.list()).filter(({ disabledAt }) => disabledAt === null);
  const names = new Map((await store.accounts.list()).map(({ id, name }) => [id, name]));
  const nameOf = (id: string) => names.get(id) ?? id;
  const notes = (await store.notes.ofHire(row.id)).map((note) => noteAnswer(note, row, place, nameOf));
  const rank = ({ done, isDue }: Note) => (done !== null ? 2 : isDue ? 0 : 1);
  const payer = (await store.hires.partsOf([row.id], ["payer"])).get(row.id)?.payer;
  return {
    notes: notes.sort((a, b) => rank(a) - rank(b) || ((a.on ?? "9999") < (b.on ?? "9999") ? -1 : 1)),
    payer: payer === undefined ? null : asDocument<PartDocuments["payer"]>(payer.document).payer,
    payerVersion: payer?.version ?? 0,
    people: people.map(({ id, name }) => ({ id, name })),
  };
}
