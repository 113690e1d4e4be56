import { type AnyRecord, checkRecord, type DepotRecord, makeReceipt, type Receipt } from "@setfair/records";
import { writeAudit } from "./audit-store.ts";
import type { Door } from "./door.ts";
import { eraseLateArrivals } from "./erase-hires.ts";
import { eraseRecords } from "./erase-records.ts";
import type { ReceiptTable, RecordTable } from "./tables.ts";
import type { AppendAnswer, Store, StoredRecord } from "./types.ts";

const readReceipt = (row: ReceiptTable): Receipt => ({
  recordId: row.record_id,
  recordHash: row.record_hash,
  seq: row.seq,
  prev: row.prev,
  at: row.at,
  hash: row.hash,
});

const readRecord = (row: Pick<RecordTable, "body">): StoredRecord => JSON.parse(row.body) as AnyRecord;

const lastReceipt = async (door: Door): Promise<Receipt | null> => {
  const row = await door.from("receipt").selectAll().orderBy("seq", "desc").limit(1).executeTakeFirst();
  return row === undefined ? null : readReceipt(row);
};

const receiptOf = async (door: Door, recordId: string): Promise<Receipt> =>
  readReceipt(
    await door.from("receipt").selectAll().where("record_id", "=", recordId).executeTakeFirstOrThrow(),
  );

const idOf = (value: unknown): string => {
  const id = typeof value === "object" && value !== null && "id" in value ? value.id : undefined;
  return typeof id === "string" ? id.slice(0, 80) : "";
};

/** Takes one record: checks it by itself, then its place in its device's chain, then what it lists. The depot's chain is locked. */
async function appendOne(door: Door, value: unknown): Promise<AppendAnswer> {
  const { record, problems } = checkRecord(value);
  if (record === null) return { ok: false, id: idOf(value), why: "broken", problems };
  const { id } = record;
  const there = await door.from("record").select("hash").where("id", "=", id).executeTakeFirst();
  if (there !== undefined) {
    if (there.hash !== record.hash) return { ok: false, id, why: "conflict" };
    return { ok: true, id, receipt: await receiptOf(door, id), again: true };
  }
  const refused = (await refusePlace(door, record)) ?? (await refuseListed(door, record));
  if (refused !== null) return refused;
  const receipt = makeReceipt(record, await lastReceipt(door), door.now());
  await writeRecord(door, record, receipt);
  return { ok: true, id, receipt, again: false };
}

async function refusePlace(door: Door, record: DepotRecord): Promise<AppendAnswer | null> {
  const end = await door
    .from("record")
    .select(["seq", "hash"])
    .where("device_id", "=", record.deviceId)
    .where("chain", "=", record.chain)
    .orderBy("seq", "desc")
    .limit(1)
    .executeTakeFirst();
  const expectedSeq = (end?.seq ?? 0) + 1;
  if (record.seq > expectedSeq) return { ok: false, id: record.id, why: "gap", expectedSeq };
  if (record.seq < expectedSeq || record.prev !== (end?.hash ?? null)) {
    return { ok: false, id: record.id, why: "fork", expectedSeq };
  }
  return null;
}

/** What a record names of others; checkRecord has checked its shape. */
function listedBy({ kind, content }: DepotRecord): readonly { id: string; hash: string }[] {
  if (kind === "correction") return [content.to as { id: string; hash: string }];
  if (kind !== "signature" && kind !== "addendum") return [];
  return content.records as { id: string; hash: string }[];
}

/** What a signature, addendum or correction lists must be the same as what is here; what has not arrived yet may still come. */
async function refuseListed(door: Door, record: DepotRecord): Promise<AppendAnswer | null> {
  const listed = listedBy(record);
  for (let start = 0; start < listed.length; start += 500) {
    const part = listed.slice(start, start + 500);
    const found = await door
      .from("record")
      .select(["id", "hash"])
      .where(
        "id",
        "in",
        part.map(({ id }) => id),
      )
      .execute();
    const hashes = new Map(found.map(({ id, hash }) => [id, hash]));
    const at = part.findIndex(({ id, hash }) => hashes.has(id) && hashes.get(id) !== hash);
    if (at >= 0) {
      const problems = [
        {
          path: record.kind === "correction" ? "content.to.hash" : `content.records.${start + at}.hash`,
          expected: "the hash of that record",
        },
      ];
      return { ok: false, id: record.id, why: "broken", problems };
    }
  }
  return null;
}

async function writeRecord(door: Door, record: DepotRecord, receipt: Receipt): Promise<void> {
  await door
    .insert("record", {
      id: record.id,
      hash: record.hash,
      device_id: record.deviceId,
      chain: record.chain,
      seq: record.seq,
      kind: record.kind,
      hire_id: record.refs.hireId ?? null,
      vehicle_id: record.refs.vehicleId ?? null,
      person_id: record.refs.personId ?? null,
      receipt_seq: receipt.seq,
      body: JSON.stringify(record),
      erased_at: null,
      held_from: null,
    })
    .execute();
  const { recordId, recordHash, seq, prev, at, hash } = receipt;
  await door
    .insert("receipt", { record_id: recordId, record_hash: recordHash, seq, prev, at, hash })
    .execute();
}

async function listRecords(door: Door, filter: Parameters<Store["records"]["list"]>[0]) {
  let query = door.from("record").select(["id", "body", "receipt_seq"]).orderBy("receipt_seq");
  if (filter.hireId !== undefined) query = query.where("hire_id", "=", filter.hireId);
  if (filter.hireIds !== undefined) query = query.where("hire_id", "in", [...filter.hireIds]);
  if (filter.vehicleId !== undefined) query = query.where("vehicle_id", "=", filter.vehicleId);
  if (filter.chain !== undefined) query = query.where("chain", "=", filter.chain);
  if (filter.kind !== undefined) query = query.where("kind", "=", filter.kind);
  if (filter.afterSeq !== undefined) query = query.where("receipt_seq", ">", filter.afterSeq);
  // all of them, unless fewer are asked for: a list cut short in silence would lose the newest
  if (filter.limit !== undefined) query = query.limit(filter.limit);
  const rows = await query.execute();
  const receipts = await receiptsOf(
    door,
    rows.map(({ id }) => id),
  );
  return rows.map((row) => ({ record: readRecord(row), receipt: receipts.get(row.id)! }));
}

async function receiptsOf(door: Door, ids: readonly string[]): Promise<Map<string, Receipt>> {
  const found = new Map<string, Receipt>();
  for (let start = 0; start < ids.length; start += 500) {
    const part = ids.slice(start, start + 500);
    const rows = await door.from("receipt").selectAll().where("record_id", "in", part).execute();
    for (const row of rows) found.set(row.record_id, readReceipt(row));
  }
  return found;
}

export function recordsStore(door: Door): Store["records"] {
  return {
    append: (records) =>
      door.within(async (inner) => {
        await inner.lock("records");
        const answers: AppendAnswer[] = [];
        for (const value of records) answers.push(await appendOne(inner, value));
        await eraseLateArrivals(
          inner,
          answers.flatMap((answer) => (answer.ok && !answer.again ? [answer.id] : [])),
        );
        return answers;
      }),
    async get(id) {
      const row = await door.from("record").select("body").where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : { record: readRecord(row), receipt: await receiptOf(door, id) };
    },
    list: (filter) => listRecords(door, filter),
    head: () => lastReceipt(door),
    export: () =>
      door.within(async (inner) => ({
        records: (await inner.from("record").select("body").orderBy("receipt_seq").execute()).map(readRecord),
        receipts: (await inner.from("receipt").selectAll().orderBy("seq").execute()).map(readReceipt),
      })),
    erase: (ids, by) =>
      door.within(async (inner) => {
        const erased = await eraseRecords(inner, ids);
        if (erased > 0) await writeAudit(inner, by, "record.erase", ids.join(" ").slice(0, 2000));
        return erased;
      }),
  };
}
