import * as z from "zod";
import { hashSchema, idSchema } from "./common.ts";
import { named } from "./named.ts";

/** The envelope is checked, field by field, by `@setfair/records`. */
export const recordSchema = named(
  "Record",
  z.looseObject({ id: idSchema, kind: z.string(), hash: hashSchema }),
);
export const receiptSchema = named("Receipt", z.looseObject({}));
export const recordBatchSchema = named(
  "RecordBatch",
  z.strictObject({ records: z.array(recordSchema).min(1).max(500) }),
);
export const recordAnswerSchema = named(
  "RecordAnswer",
  z.object({
    /** one for each record sent, in order */
    receipts: z.array(receiptSchema),
    /** how many were new; the others had arrived before */
    added: z.int(),
    head: z.string().nullable(),
  }),
);
/** Readable by `setfair verify`. */
export const recordExportSchema = named(
  "RecordExport",
  z.looseObject({ records: z.array(recordSchema), receipts: z.array(receiptSchema) }),
);
