import * as z from "zod";
import { NOTE_MOMENTS } from "../../store/types.ts";
import { dateSchema, findingSchema, idSchema, instantSchema, textSchema } from "./common.ts";
import { named } from "./named.ts";

export const noteSchema = named(
  "Note",
  z.object({
    id: idSchema,
    hireId: idSchema,
    kind: z.enum(["note", "promise"]),
    text: z.string(),
    /** at which it must reappear; null: it stands on the hire only */
    moment: z.enum(NOTE_MOMENTS).nullable(),
    /** the day on which it reappears, in the depot's zone */
    on: dateSchema.nullable(),
    owner: z.object({ id: idSchema, name: z.string() }).nullable(),
    by: z.string(),
    at: instantSchema,
    done: z.object({ by: z.string(), at: instantSchema }).nullable(),
    /** its moment has come and nobody ticked it */
    isDue: z.boolean(),
  }),
);
export const newNoteSchema = named(
  "NewNote",
  z.strictObject({
    kind: z.enum(["note", "promise"]).default("note"),
    text: textSchema(500),
    moment: z.enum(NOTE_MOMENTS).optional(),
    /** with the moment `day` */
    on: dateSchema.optional(),
    /** account of who sees to it */
    ownerId: idSchema.optional(),
  }),
);
export const tickNoteSchema = named("TickNote", z.strictObject({ done: z.boolean() }));

/** Who pays, where it is not the hirer: stands on quote, receipts and statement. */
export const payerSchema = named(
  "Payer",
  z.strictObject({ name: textSchema(80), email: z.email().max(200), address: textSchema(300).optional() }),
);
export const setPayerSchema = named("SetPayer", z.strictObject({ payer: z.nullable(payerSchema) }));

export const hireNotesSchema = named(
  "HireNotes",
  z.object({
    notes: z.array(noteSchema),
    payer: payerSchema.nullable().optional(),
    /** of the payer: what a change is based on; 0 where none was ever kept */
    payerVersion: z.int(),
    people: z.array(z.object({ id: idSchema, name: z.string() })),
  }),
);

/** What a day must not forget: notes whose moment has come, and codes to ask for. */
export const remindersSchema = named(
  "Reminders",
  z.object({
    notes: z.array(
      z.object({ note: noteSchema, reference: z.string(), customer: z.string(), registration: z.string() }),
    ),
    /** drivers whose entitlement is to be looked up: from this day a check code still lives at the keys */
    askForCode: z.array(
      z.object({
        hireId: idSchema,
        reference: z.string(),
        customer: z.string(),
        driver: z.string(),
        driverId: idSchema,
        from: dateSchema,
        keys: dateSchema,
      }),
    ),
    /** what must be got for countries of a booked hire, by a day within a week or over */
    toGet: z.array(
      z.object({
        hireId: idSchema,
        reference: z.string(),
        customer: z.string(),
        finding: findingSchema,
        doBy: dateSchema,
      }),
    ),
  }),
);
export const remindersQuerySchema = z.object({ date: dateSchema.optional() });
