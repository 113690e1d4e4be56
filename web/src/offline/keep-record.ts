import {
  type DepotRecord,
  type JsonObject,
  makeRecord,
  type RecordKind,
  type RecordRefs,
} from "@setfair/records";
import type { DeviceDatabase, KeptRecord, Via } from "./database.ts";
import { deviceId } from "./device.ts";

export interface RecordToKeep {
  readonly kind: RecordKind;
  readonly refs: RecordRefs;
  /** the walk-round whose chain of this device it belongs to */
  readonly chain: string;
  readonly content: JsonObject;
  readonly via: Via;
  readonly photographs?: readonly string[];
  /** made when left out; the same id twice keeps one record */
  readonly id?: string;
  /** instant, ISO 8601 UTC; now when left out */
  readonly at?: string;
}

export const viaText = (via: Via): string => (via === "staff" ? "staff" : `link:${via.token}`);

/**
 * Appends a record to this device's chain and puts it in the outbox, in one transaction with whatever
 * `also` writes: either all of it is kept or none.
 * @throws TypeError naming the field where the record is not well-formed
 */
export async function keepRecord(
  db: DeviceDatabase,
  input: RecordToKeep,
  also: () => Promise<unknown> = async () => undefined,
): Promise<DepotRecord> {
  const device = await deviceId(db);
  return db.transaction("rw", [db.records, db.photographs, db.rounds, db.settings], async () => {
    const record = await append(db, input, device);
    await also();
    return record;
  });
}

/** Inside a transaction that holds `records`. */
async function append(db: DeviceDatabase, input: RecordToKeep, device: string): Promise<DepotRecord> {
  if (input.id !== undefined) {
    const before = await db.records.get(input.id);
    if (before !== undefined) return before.record;
  }
  const last = await lastOfChain(db, input.chain);
  const record = makeRecord(
    {
      deviceId: device,
      deviceTime: input.at ?? new Date().toISOString(),
      kind: input.kind,
      refs: input.refs,
      chain: input.chain,
      content: input.content,
      ...(input.id === undefined ? {} : { id: input.id }),
    },
    last === undefined ? null : { seq: last.seq, hash: last.hash },
  );
  await db.records.add({
    id: record.id,
    chain: record.chain,
    seq: record.seq,
    hash: record.hash,
    record,
    via: viaText(input.via),
    state: "waiting",
    photographs: input.photographs ?? [],
  });
  return record;
}

/** The last record of this device's own chain, sent or not. */
export async function lastOfChain(db: DeviceDatabase, chain: string): Promise<KeptRecord | undefined> {
  return db.records.where("[chain+seq]").between([chain, 0], [chain, Number.MAX_SAFE_INTEGER]).last();
}

/** This device's records of a chain, in order. */
export async function recordsOfChain(db: DeviceDatabase, chain: string): Promise<readonly KeptRecord[]> {
  return db.records.where("[chain+seq]").between([chain, 0], [chain, Number.MAX_SAFE_INTEGER]).toArray();
}
