import { findNotJson } from "./json.ts";
import { isGiven, type LeftOut, type Link, receiptOfLink, wholeReceipts } from "./left-out.ts";
import { hashOfReceipt, type Receipt } from "./receipt.ts";
import { type AnyRecord, erasedRecordSchema, hashOfRecord, isErased, recordSchema } from "./record.ts";

/**
 * Records and receipts of one depot, in any order: all of them, or those of one hire with what was left out in
 * between, so that the depot's chain can still be walked.
 */
export interface RecordsExport {
  readonly records: readonly AnyRecord[];
  readonly receipts: readonly Receipt[];
  readonly leftOut?: LeftOut;
}

/** Why a record does not hold. Texts are in `words` under `verify.<why>`. */
export const BREAKS = [
  "receiptSeq",
  "receiptPrev",
  "receiptHash",
  "recordTwice",
  "recordMissing",
  "recordNotReceived",
  "recordHash",
  "recordOtherThanReceived",
  "chainSeq",
  "chainPrev",
  "listedRecordOther",
  "headOther",
] as const;
export type Break = (typeof BREAKS)[number];

export interface Verification {
  readonly ok: boolean;
  /** records whose hash was computed again and agreed */
  readonly checked: number;
  /** records erased: id, hash and place in the chains were checked; content, refs and times can no longer be */
  readonly erased: number;
  readonly firstBroken: { readonly id: string; readonly why: Break } | null;
  /** ids that a signature or addendum lists and that never arrived: another device still holds them, or they are lost */
  readonly awaited: readonly string[];
  /** hash of the last receipt; null where there is none */
  readonly head: string | null;
  /** receipts of records that are left out on purpose: their place in the chain was checked, the records are not here */
  readonly leftOut: number;
  /** how often such a record stands between two of these on one device: ask the depot whose it is */
  readonly gaps: number;
}

interface Walk {
  readonly byId: ReadonlyMap<string, AnyRecord>;
  /** of what was left out: hashes of the records so far, and by id */
  readonly others: Map<string, string>;
  readonly otherHashes: Set<string>;
  /** records from before the first receipt here are not known at all */
  readonly isFromTheStart: boolean;
  readonly ends: Map<string, { seq: number; hash: string }>;
  readonly seen: Set<string>;
  readonly awaited: Set<string>;
  checked: number;
  erased: number;
  leftOut: number;
  gaps: number;
}

/**
 * Goes along the depot's chain in order of arrival and stops at the first record that does not hold: the
 * receipt's own place, link and hash; the record's hash; its place in its device's chain; and, for a
 * signature or addendum, that the records it lists are the same; those that never arrived are `awaited`.
 */
export function verifyRecords(all: RecordsExport): Verification {
  const { leftOut } = all;
  const walk: Walk = {
    byId: new Map(all.records.map((r) => [r.id, r])),
    others: new Map(),
    otherHashes: new Set(),
    isFromTheStart: (leftOut?.before ?? null) === null,
    ends: new Map(),
    seen: new Set(),
    awaited: new Set(),
    checked: 0,
    erased: 0,
    leftOut: 0,
    gaps: 0,
  };
  let last: Pick<Receipt, "seq" | "hash"> | null = leftOut?.before ?? null;
  const done = (broken: { id: string; why: Break } | null): Verification => ({
    ok: broken === null,
    checked: walk.checked,
    erased: walk.erased,
    firstBroken: broken,
    awaited: [...walk.awaited],
    head: last?.hash ?? null,
    leftOut: walk.leftOut,
    gaps: walk.gaps,
  });
  for (const step of stepsOf(all)) {
    const receipt: Receipt = isGiven(step) ? step : receiptOfLink(step, last);
    const why =
      breakOfReceipt(receipt, last) ??
      (isGiven(step) ? breakOfRecord(receipt, walk) : breakOfLink(step, walk));
    if (why !== null) return done({ id: receipt.recordId, why });
    last = receipt;
  }
  const stray = all.records.find((record) => !walk.seen.has(record.id));
  if (stray !== undefined) return done({ id: stray.id, why: "recordNotReceived" });
  const twice = all.records.find((record) => walk.byId.get(record.id) !== record);
  if (twice !== undefined) return done({ id: twice.id, why: "recordTwice" });
  if (leftOut !== undefined && leftOut.head !== (last?.hash ?? null))
    return done({ id: leftOut.links.at(-1)?.recordId ?? "", why: "headOther" });
  return done(null);
}

const stepsOf = ({ receipts, leftOut }: RecordsExport): readonly (Receipt | Link)[] =>
  [...receipts, ...(leftOut?.links ?? [])].sort((a, b) => a.seq - b.seq);

/** Notes what is left out; a record that is here must not be among it. */
function breakOfLink({ recordId, recordHash }: Link, walk: Walk): Break | null {
  if (walk.byId.has(recordId) || walk.others.has(recordId)) return "recordTwice";
  walk.others.set(recordId, recordHash);
  walk.otherHashes.add(recordHash);
  walk.leftOut += 1;
  return null;
}

function breakOfReceipt(receipt: Receipt, last: Pick<Receipt, "seq" | "hash"> | null): Break | null {
  if (receipt.seq !== (last?.seq ?? 0) + 1) return "receiptSeq";
  if (receipt.prev !== (last?.hash ?? null)) return "receiptPrev";
  return hashOfReceipt(receipt) === receipt.hash ? null : "receiptHash";
}

function breakOfRecord(receipt: Receipt, walk: Walk): Break | null {
  const record = walk.byId.get(receipt.recordId);
  if (record === undefined) return "recordMissing";
  if (walk.seen.has(record.id)) return "recordTwice";
  if (!holdsByItself(record)) return "recordHash";
  if (record.hash !== receipt.recordHash) return "recordOtherThanReceived";
  const key = JSON.stringify([record.deviceId, record.chain]);
  const misplaced = breakOfPlace(record, walk.ends.get(key), walk) ?? breakOfListed(record, walk);
  if (misplaced !== null) return misplaced;
  walk.ends.set(key, { seq: record.seq, hash: record.hash });
  walk.seen.add(record.id);
  if (isErased(record)) walk.erased += 1;
  else walk.checked += 1;
  return null;
}

/** The record follows the one before it on its device; what stands between may have been left out. */
function breakOfPlace(
  { seq, prev }: AnyRecord,
  end: { readonly seq: number; readonly hash: string } | undefined,
  walk: Walk,
): Break | null {
  const expected = (end?.seq ?? 0) + 1;
  if (seq === expected) return prev === (end?.hash ?? null) ? null : "chainPrev";
  if (seq < expected) return "chainSeq";
  // the one before it was left out: among what is named here, or before all of it
  if (prev !== null && walk.otherHashes.has(prev)) {
    if (end !== undefined) walk.gaps += 1;
    return null;
  }
  return end === undefined && prev !== null && !walk.isFromTheStart ? null : "chainSeq";
}

/** Exactly the fields of an envelope, and the hash that follows from them; of an erased record only the fields. */
function holdsByItself(record: AnyRecord): boolean {
  if (findNotJson(record) !== null) return false;
  if (isErased(record)) return erasedRecordSchema.safeParse(record).success;
  return recordSchema.safeParse(record).success && hashOfRecord(record) === record.hash;
}

/** Kinds that name other records by what they are and what they held. */
const POINTING: ReadonlySet<string> = new Set(["signature", "addendum", "correction"]);

function breakOfListed(record: AnyRecord, walk: Walk): Break | null {
  if (isErased(record) || !POINTING.has(record.kind)) return null;
  const { records = [], to } = record.content as {
    records?: { id: string; hash: string }[];
    to?: { id: string; hash: string };
  };
  for (const pointer of to === undefined ? records : [to, ...records]) {
    const hash = walk.byId.get(pointer.id)?.hash ?? walk.others.get(pointer.id);
    if (hash === undefined) walk.awaited.add(pointer.id);
    else if (hash !== pointer.hash) return "listedRecordOther";
  }
  return null;
}

export interface HeadAnswer {
  readonly ok: boolean;
  readonly records: Verification;
  /** the receipt that carries this head or acknowledges this record hash; null where the export does not hold it */
  readonly receipt: Receipt | null;
}

/**
 * Proves a printed or mailed copy: `head` is the hash of a receipt (the chain's head when the copy was made)
 * or of a record. It holds when it stands in the export and everything up to the break, if any, includes it.
 */
export function verifyHead(all: RecordsExport, head: string): HeadAnswer {
  const wanted = head.trim().toLowerCase();
  const records = verifyRecords(all);
  const receipt =
    wholeReceipts(all).find(({ hash, recordHash }) => hash === wanted || recordHash === wanted) ?? null;
  return { ok: records.ok && receipt !== null, records, receipt };
}
