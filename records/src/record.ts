/**
 * The envelope of a record. Records are appended, never changed.
 *
 * `hash` = SHA-256( 16 raw bytes of `salt` ‖ UTF-8 of RFC 8785 canonical JSON of every other field: v, id,
 * deviceId, deviceTime, kind, refs, chain, seq, prev, content ), lower-case hex. `salt` and `hash` are not in
 * the JSON. The salt keeps the content from being guessed from the hash once both are erased.
 */
import { bytesToHex, randomBytes } from "@noble/hashes/utils.js";
import { uuidv7 } from "uuidv7";
import * as z from "zod/mini";
import en from "zod/v4/locales/en.js";
import { hashSalted } from "./hash.ts";
import { findNotJson, type JsonObject } from "./json.ts";
import { hashSchema, RECORD_CONTENTS, RECORD_KINDS, type RecordKind } from "./kinds.ts";

// the mini build carries no messages of its own; only English is bundled
z.config(en());

const id = z.string().check(z.minLength(1), z.maxLength(80));

/** Ids only: nothing here may tell who a person is, since refs outlive an erasure. */
export const refsSchema = z.strictObject({
  hireId: z.optional(id),
  vehicleId: z.optional(id),
  personId: z.optional(id),
  accountId: z.optional(id),
  jobId: z.optional(id),
});
export type RecordRefs = z.infer<typeof refsSchema>;

const UUID_V7 = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

const headShape = {
  v: z.literal(1),
  id: z.string().check(z.regex(UUID_V7, "expected a UUID version 7 in lower case")),
  deviceId: id,
  /** the device's own clock */
  deviceTime: z.iso.datetime(),
  kind: z.enum(RECORD_KINDS),
  refs: refsSchema,
  /** the walk-round (or other round) whose chain of this device it belongs to */
  chain: id,
  /** place in that chain, from 1 */
  seq: z.int().check(z.minimum(1)),
  /** hash of the record before it in that chain; null for the first */
  prev: z.nullable(hashSchema),
};

export const recordSchema = z.strictObject({
  ...headShape,
  salt: z.string().check(z.regex(/^[0-9a-f]{32}$/, "expected 32 hex digits")),
  content: z.record(z.string(), z.unknown()),
  hash: hashSchema,
});

/** After an erasure: salt and content are gone together, the hash and the place in the chains stay. */
export const erasedRecordSchema = z.strictObject({
  ...headShape,
  erasedAt: z.iso.datetime(),
  hash: hashSchema,
});

export type DepotRecord = Omit<z.infer<typeof recordSchema>, "content"> & { readonly content: JsonObject };
export type ErasedRecord = z.infer<typeof erasedRecordSchema>;
export type AnyRecord = DepotRecord | ErasedRecord;

export const isErased = (record: AnyRecord): record is ErasedRecord => "erasedAt" in record;

/** What the device holds of its own chain: the last record there, or null before the first. */
export type ChainEnd = { readonly seq: number; readonly hash: string } | null;

export interface NewRecord {
  readonly deviceId: string;
  /** instant, ISO 8601 UTC */
  readonly deviceTime: string;
  readonly kind: RecordKind;
  readonly refs: RecordRefs;
  readonly chain: string;
  readonly content: JsonObject;
  /** made when left out */
  readonly id?: string;
  /** made when left out: 128 random bits */
  readonly salt?: string;
}

/** The hash that a record must carry. */
export function hashOfRecord(record: Omit<DepotRecord, "hash">): string {
  const { v, id, deviceId, deviceTime, kind, refs, chain, seq, prev, content } = record;
  return hashSalted(record.salt, { v, id, deviceId, deviceTime, kind, refs, chain, seq, prev, content });
}

/**
 * Makes the next record of a device's chain.
 * @throws TypeError naming the field where it would not pass {@link checkRecord}
 */
export function makeRecord(input: NewRecord, after: ChainEnd): DepotRecord {
  const open = {
    v: 1 as const,
    id: input.id ?? uuidv7(),
    deviceId: input.deviceId,
    deviceTime: input.deviceTime,
    kind: input.kind,
    refs: input.refs,
    chain: input.chain,
    seq: (after?.seq ?? 0) + 1,
    prev: after?.hash ?? null,
    salt: input.salt ?? bytesToHex(randomBytes(16)),
    content: input.content,
  };
  const wrong = findNotJson(open);
  if (wrong !== null) throw new TypeError(`${wrong.path}: expected ${wrong.expected}`);
  const record = { ...open, hash: hashOfRecord(open) };
  const { problems } = checkRecord(record);
  if (problems.length > 0)
    throw new TypeError(problems.map(({ path, expected }) => `${path}: ${expected}`).join("; "));
  return record;
}

/** Salt and content go together; everything else stays. Erasing twice changes nothing. */
export function eraseRecord(record: AnyRecord, erasedAt: string): ErasedRecord {
  if (isErased(record)) return record;
  const { salt: _salt, content: _content, ...rest } = record;
  return { ...rest, erasedAt };
}

export interface RecordProblem {
  readonly path: string;
  readonly expected: string;
}

/** Shape, content of its kind, and hash; for one record by itself. Names every field that is wrong. */
export function checkRecord(value: unknown): {
  readonly record: DepotRecord | null;
  readonly problems: readonly RecordProblem[];
} {
  const wrong = findNotJson(value);
  if (wrong !== null) return { record: null, problems: [wrong] };
  const parsed = recordSchema.safeParse(value);
  if (!parsed.success) return { record: null, problems: problemsOf(parsed.error.issues, []) };
  const record = parsed.data as DepotRecord; // findNotJson has shown that the content is JSON
  const content = RECORD_CONTENTS[record.kind].safeParse(record.content);
  if (!content.success) return { record: null, problems: problemsOf(content.error.issues, ["content"]) };
  if (hashOfRecord(record) !== record.hash) {
    return { record: null, problems: [{ path: "hash", expected: "the hash of this very record" }] };
  }
  return { record, problems: [] };
}

function problemsOf(
  issues: readonly { readonly path: readonly PropertyKey[]; readonly message: string }[],
  under: readonly string[],
): RecordProblem[] {
  return issues.map((issue) => ({
    path: [...under, ...issue.path.map(String)].join("."),
    expected: issue.message,
  }));
}
