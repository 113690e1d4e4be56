import { leftOutSchema, receiptSchema as receiptOfDepot } from "@setfair/records";
import * as z from "zod";
import { idSchema, textSchema } from "./common.ts";
import { named } from "./named.ts";

/**
 * One record; the envelope and the content of its kind are checked, field by field, by `@setfair/records`.
 * What walk-rounds append (`content` beyond `about`, which is the id of the check, or the part for a mark):
 * every one `direction: "out" | "back"`;
 * reading `{value, unit, photographs?}` · count `{found, expected, photographs?}` ·
 * look `{saw: "same" | "mark" | "tooWetOrDirty", photographs?}` ·
 * mark `{part, view, xShare, yShare, markKind, sizeMm?, note?, checkId?, photographs}`.
 * The chain of a walk-round is `<hireId>.out` or `<hireId>.back`, of readings on the road `<hireId>.road`.
 */
export const recordSchema = named("Record", z.looseObject({ id: idSchema }));
export const receiptSchema = named("Receipt", receiptOfDepot);
export const recordBatchSchema = named(
  "RecordBatch",
  z.strictObject({ records: z.array(recordSchema).min(1).max(500) }),
);
export const recordAnswerSchema = named(
  "RecordAnswer",
  z.object({
    /** one for each record sent, in order; a batch with a bad record is refused whole, with the bad one named */
    receipts: z.array(z.object({ id: idSchema, receipt: receiptSchema, again: z.boolean() })),
    /** how many were new; the others had arrived before */
    added: z.int(),
    /** head of the depot's chain */
    head: z.string().nullable(),
  }),
);
/** Records of one hire, with what was left out of the depot's chain; readable by `setfair verify`. */
export const recordExportSchema = named(
  "RecordExport",
  z.looseObject({
    records: z.array(recordSchema),
    receipts: z.array(receiptSchema),
    leftOut: named("RecordsLeftOut", leftOutSchema),
  }),
);
export const correctionSchema = named(
  "Correction",
  z.strictObject({
    recordId: idSchema,
    /** of a reading `value`, of a count `found`, of a mark `sizeMm` or `note` */
    instead: z.strictObject({
      value: z.number().min(-1e6).max(1e7).optional(),
      found: z.int().min(0).max(1000).optional(),
      sizeMm: z.number().min(0).max(10_000).optional(),
      note: textSchema(500).optional(),
    }),
    why: textSchema(400),
  }),
);
export const photoStateSchema = named(
  "PhotoState",
  z.object({
    /**
     * partial: send on from `received`, with `Content-Range: bytes first-last/total`, or `bytes *\/total` and no body where
     * all of it came · removed: it was removed here for
     * good, and what came was not kept; the device need not send it again
     */
    state: z.enum(["kept", "partial", "removed"]),
    received: z.int(),
    /** it was here before */
    again: z.boolean(),
  }),
);
