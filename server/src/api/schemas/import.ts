import * as z from "zod";
import { IMPORT_KINDS } from "../../import/kinds.ts";
import { DATE_ORDERS } from "../../import/read-days.ts";
import { ENCODINGS } from "../../import/read-table.ts";
import { EXPORT_KINDS } from "../../import/write-csv.ts";
import { idSchema, instantSchema } from "./common.ts";
import { named } from "./named.ts";

export const importParams = z.object({ what: z.enum(IMPORT_KINDS) });
export const exportParams = z.object({ what: z.enum(EXPORT_KINDS) });

export const importSchema = named(
  "Import",
  z.strictObject({
    /** the bytes of the file in base64, at most 10 MB of them */
    file: z.string(),
    /** said by a person, where the dry run asked */
    encoding: z.enum(ENCODINGS).optional(),
    dateOrder: z.enum(DATE_ORDERS).optional(),
    /** left out: nothing is changed, and the answer says what would happen */
    confirm: z.strictObject({ accepted: z.int().min(0), rejected: z.int().min(0) }).optional(),
  }),
);

export const importAnswerSchema = named(
  "ImportAnswer",
  z.object({
    /** false for a dry run, and for a question */
    done: z.boolean(),
    /** what only a person can say */
    question: z.object({ what: z.enum(["encoding", "dateOrder"]), sample: z.string() }).nullable(),
    encoding: z.enum(ENCODINGS).nullable(),
    dateOrder: z.enum(DATE_ORDERS).nullable(),
    columns: z.array(z.string()),
    /** columns that are not taken */
    ignored: z.array(z.string()),
    accepted: z.array(z.object({ line: z.int(), title: z.string(), text: z.string() })),
    rejected: z.array(
      z.object({ line: z.int(), column: z.string(), value: z.string(), expected: z.string() }),
    ),
  }),
);

export const vehicleDraftsSchema = named(
  "VehicleDrafts",
  z.object({
    drafts: z.array(
      z.object({
        id: idSchema,
        registration: z.string(),
        name: z.string(),
        bodyStyle: z.string(),
        mamKg: z.number().nullable(),
        firstRegistered: z.string().nullable(),
        at: instantSchema,
      }),
    ),
  }),
);
