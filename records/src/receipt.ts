import * as z from "zod/mini";
import { hashJson } from "./hash.ts";
import { hashSchema } from "./kinds.ts";
import type { AnyRecord } from "./record.ts";

/** The depot's proof of arrival: one chain per depot, in the order in which records came. */
export const receiptSchema = z.strictObject({
  recordId: z.uuid(),
  recordHash: hashSchema,
  /** place in the depot's chain, from 1 */
  seq: z.int().check(z.minimum(1)),
  prev: z.nullable(hashSchema),
  /** the server's clock */
  at: z.iso.datetime(),
  hash: hashSchema,
});
export type Receipt = z.infer<typeof receiptSchema>;

/** SHA-256 of the canonical JSON of the other five fields. */
export function hashOfReceipt(receipt: Omit<Receipt, "hash">): string {
  const { recordId, recordHash, seq, prev, at } = receipt;
  return hashJson({ recordId, recordHash, seq, prev, at });
}

/** The next receipt after `last` (null for the depot's first). */
export function makeReceipt(
  record: Pick<AnyRecord, "id" | "hash">,
  last: Pick<Receipt, "seq" | "hash"> | null,
  at: string,
): Receipt {
  const open = {
    recordId: record.id,
    recordHash: record.hash,
    seq: (last?.seq ?? 0) + 1,
    prev: last?.hash ?? null,
    at,
  };
  return { ...open, hash: hashOfReceipt(open) };
}
