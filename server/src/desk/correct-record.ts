import { isErased, type JsonObject, makeRecord, RECORD_CONTENTS } from "@setfair/records";
import { badField, Refusal } from "../api/refusal.ts";
import type { Store } from "../store/types.ts";

/** What can be put right in which kind of record; anything else is recorded anew. */
const FIELDS: Readonly<Record<string, readonly string[]>> = {
  reading: ["value"],
  count: ["found"],
  mark: ["sizeMm", "note"],
};

export interface Correction {
  readonly recordId: string;
  readonly instead: JsonObject;
  readonly why: string;
}
interface Corrector {
  readonly id: string;
  readonly name: string;
  readonly now: Date;
}

/** Writes a correction of one record of a hire as a record of its own; the first stays as it came. */
export async function correctRecord(
  store: Store,
  hireId: string,
  { recordId, instead, why }: Correction,
  { id, name, now }: Corrector,
): Promise<void> {
  const record = (await store.records.get(recordId))?.record;
  if (record === undefined || record.refs.hireId !== hireId || isErased(record))
    throw badField("recordId", "expected a record of this hire");
  const fields = FIELDS[record.kind];
  if (fields === undefined) throw badField("recordId", "expected a reading, a count or a mark");
  const wrong = Object.keys(instead).find((field) => !fields.includes(field));
  if (wrong !== undefined || Object.keys(instead).length === 0)
    throw badField(wrong === undefined ? "instead" : `instead.${wrong}`, `expected ${fields.join(" or ")}`);
  const holds = RECORD_CONTENTS[record.kind].safeParse({ ...record.content, ...instead });
  if (!holds.success)
    throw new Refusal("badInput", {
      problems: holds.error.issues.map(({ path, message }) => ({
        path: ["instead", ...path.map(String)].join("."),
        expected: message,
      })),
    });
  const deviceId = `desk.${id}`;
  const chain = `${hireId}.corrections`;
  await store.within(async (inner) => {
    const own = (await inner.records.list({ hireId, chain })).filter(
      (each) => each.record.deviceId === deviceId,
    );
    const last = own.at(-1)?.record ?? null;
    const made = makeRecord(
      {
        deviceId,
        deviceTime: now.toISOString(),
        kind: "correction",
        refs: { ...record.refs, accountId: id },
        chain,
        content: { to: { id: record.id, hash: record.hash }, by: name, why, instead },
      },
      last,
    );
    const [answer] = await inner.records.append([made]);
    if (answer?.ok !== true) throw new Refusal("recordConflict");
    await inner.audit.add({ by: id, act: "record.correct", about: hireId, document: { recordId, why } });
  });
}
