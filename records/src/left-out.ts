/** What an export of some records says of the others: enough to walk the depot's chain, and nothing else. */
import * as z from "zod/mini";
import { hashSchema } from "./kinds.ts";
import { hashOfReceipt, type Receipt, receiptSchema } from "./receipt.ts";
import type { AnyRecord } from "./record.ts";

/** The receipt of a record that is not given; its `prev` and `hash` follow from the one before. */
const linkSchema = z.strictObject({
  seq: receiptSchema.shape.seq,
  recordId: receiptSchema.shape.recordId,
  recordHash: receiptSchema.shape.recordHash,
  at: receiptSchema.shape.at,
});
export type Link = z.infer<typeof linkSchema>;

export const leftOutSchema = z.strictObject({
  /** the last receipt before the first that is given or named; null where that is the depot's first */
  before: z.nullable(z.strictObject({ seq: receiptSchema.shape.seq, hash: hashSchema })),
  links: z.array(linkSchema),
  /** hash of the depot's last receipt when this was made; null where the depot has none */
  head: z.nullable(hashSchema),
});
export type LeftOut = z.infer<typeof leftOutSchema>;

/** The whole receipt of a link, as it follows from the receipt before it. */
export function receiptOfLink(
  { seq, recordId, recordHash, at }: Link,
  last: Pick<Receipt, "hash"> | null,
): Receipt {
  const open = { seq, recordId, recordHash, at, prev: last?.hash ?? null };
  return { ...open, hash: hashOfReceipt(open) };
}

/** A receipt as it was given, and not one that was left out. */
export const isGiven = (step: Receipt | Link): step is Receipt => "hash" in step;

interface Given {
  readonly receipts: readonly Receipt[];
  readonly leftOut?: LeftOut;
}

/** Every receipt of an export by its place: given, worked out from what was left out, or as far as it is known. */
export function wholeReceipts({ receipts, leftOut }: Given): readonly Receipt[] {
  if (leftOut === undefined) return receipts;
  const steps = [...receipts, ...leftOut.links].sort((a, b) => a.seq - b.seq);
  let last: Pick<Receipt, "hash"> | null = leftOut.before;
  return steps.map((step) => {
    const receipt: Receipt = isGiven(step) ? step : receiptOfLink(step, last);
    last = receipt;
    return receipt;
  });
}

/**
 * Keeps the records that `belongs` says, with their receipts, and leaves of the others what the chain needs: from the
 * first that is kept on where each stands, when it came and its salted hash; of what came before one hash in all.
 */
export function keepRecords(
  all: { readonly records: readonly AnyRecord[]; readonly receipts: readonly Receipt[] },
  belongs: (record: AnyRecord) => boolean,
): {
  readonly records: readonly AnyRecord[];
  readonly receipts: readonly Receipt[];
  readonly leftOut: LeftOut;
} {
  const records = all.records.filter(belongs);
  const kept = new Set(records.map(({ id }) => id));
  const chain = [...all.receipts].sort((a, b) => a.seq - b.seq);
  const first = chain.findIndex(({ recordId }) => kept.has(recordId));
  const from = first < 0 ? chain.length : first;
  const before = chain[from - 1];
  const needed = chain.slice(from);
  return {
    records,
    receipts: needed.filter(({ recordId }) => kept.has(recordId)),
    leftOut: {
      before: before === undefined ? null : { seq: before.seq, hash: before.hash },
      links: needed
        .filter(({ recordId }) => !kept.has(recordId))
        .map(({ seq, recordId, recordHash, at }) => ({ seq, recordId, recordHash, at })),
      head: chain.at(-1)?.hash ?? null,
    },
  };
}
