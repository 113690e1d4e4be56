import { findNotJson } from "./json.ts";
import { hashOfReceipt, type Receipt } from "./receipt.ts";
import { type AnyRecord, erasedRecordSchema, hashOfRecord, isErased, recordSchema } from "./record.ts";

/** All records and receipts of one depot, as `export` gives them; in any order. */
export interface RecordsExport {
  readonly records: readonly AnyRecord[];
  readonly receipts: readonly Receipt[];
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
}

interface Walk {
  readonly byId: ReadonlyMap<string, AnyRecord>;
  readonly ends: Map<string, { seq: number; hash: string }>;
  readonly seen: Set<string>;
  readonly awaited: Set<string>;
  checked: number;
  erased: number;
}

/**
 * Goes along the depot's chain in order of arrival and stops at the first record that does not hold: the
 * receipt's own place, link and hash; the record's hash; its place in its device's chain; and, for a
 * signature or addendum, that the records it lists are the same; those that never arrived are `awaited`.
 */
export function verifyRecords(all: RecordsExport): Verification {
  const receipts = [...all.receipts].sort((a, b) => a.seq - b.seq);
  const walk: Walk = {
    byId: new Map(all.records.map((r) => [r.id, r])),
    ends: new Map(),
    seen: new Set(),
    awaited: new Set(),
    checked: 0,
    erased: 0,
  };
  let last: Receipt | null = null;
  const done = (broken: { id: string; why: Break } | null): Verification => ({
    ok: broken === null,
    checked: walk.checked,
    erased: walk.erased,
    firstBroken: broken,
    awaited: [...walk.awaited],
    head: last?.hash ?? null,
  });
  for (const receipt of receipts) {
    const why = breakOfReceipt(receipt, last) ?? breakOfRecord(receipt, walk);
    if (why !== null) return done({ id: receipt.recordId, why });
    last = receipt;
  }
  const stray = all.records.find((record) => !walk.seen.has(record.id));
  if (stray !== undefined) return done({ id: stray.id, why: "recordNotReceived" });
  const twice = all.records.find((record) => walk.byId.get(record.id) !== record);
  return done(twice === undefined ? null : { id: twice.id, why: "recordTwice" });
}

function breakOfReceipt(receipt: Receipt, last: Receipt | null): Break | null {
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
  const end = walk.ends.get(key);
  if (record.seq !== (end?.seq ?? 0) + 1) return "chainSeq";
  if (record.prev !== (end?.hash ?? null)) return "chainPrev";
  const listed = breakOfListed(record, walk);
  if (listed !== null) return listed;
  walk.ends.set(key, { seq: record.seq, hash: record.hash });
  walk.seen.add(record.id);
  if (isErased(record)) walk.erased += 1;
  else walk.checked += 1;
  return null;
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
    const listed = walk.byId.get(pointer.id);
    if (listed === undefined) walk.awaited.add(pointer.id);
    else if (listed.hash !== pointer.hash) return "listedRecordOther";
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
    all.receipts.find(({ hash, recordHash }) => hash === wanted || recordHash === wanted) ?? null;
  return { ok: records.ok && receipt !== null, records, receipt };
}
