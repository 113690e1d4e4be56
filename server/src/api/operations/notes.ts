import * as z from "zod";
import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { basedOn, byId, may } from "./shared.ts";

export const notesOperations = {
  readNotes: operation({
    method: "GET",
    url: "/hires/:id/notes",
    tag: "notes",
    summary: "Notes and promises of a hire, and who pays where it is not the hirer",
    access: may("hire.see"),
    params: byId,
    answer: s.hireNotesSchema,
  }),
  addNote: operation({
    method: "POST",
    url: "/hires/:id/notes",
    tag: "notes",
    summary: "A note or a promise, with the moment at which it must reappear",
    access: may("hire.see"),
    params: byId,
    body: s.newNoteSchema,
    answer: s.hireNotesSchema,
  }),
  tickNote: operation({
    method: "PUT",
    url: "/notes/:noteId/done",
    tag: "notes",
    summary: "Tick a note, or take the tick back",
    access: may("hire.see"),
    params: z.object({ noteId: s.idSchema }),
    body: s.tickNoteSchema,
    answer: s.hireNotesSchema,
  }),
  setPayer: operation({
    method: "PUT",
    url: "/hires/:id/payer",
    tag: "notes",
    summary: "Who pays, where it is not the hirer",
    access: may("hire.write"),
    params: byId,
    query: basedOn,
    body: s.setPayerSchema,
    answer: s.hireNotesSchema,
  }),
  reminders: operation({
    method: "GET",
    url: "/reminders",
    tag: "notes",
    summary: "What a day must not forget: notes whose moment has come, and check codes to ask for",
    access: may("day.see"),
    query: s.remindersQuerySchema,
    answer: s.remindersSchema,
  }),
} as const;
