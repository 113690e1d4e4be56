import { uuidv7 } from "uuidv7";
import { writeAudit } from "./audit-store.ts";
import { fromText, pageOf, readCursor, rowsOf, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import { eraseHires } from "./erase-hires.ts";
import { eraseRecords } from "./erase-records.ts";
import { rememberErasure } from "./erasures.ts";
import { indexHire } from "./hires-store.ts";
import { eraseLicencesOf } from "./licences-store.ts";
import { eraseMessagesOf } from "./messages-store.ts";
import type { CustomerTable } from "./tables.ts";
import { type CustomerRow, HIRE_PARTS, type Store } from "./types.ts";
import { beginningsOf, endOfBeginning, indexWords } from "./words.ts";

const read = (row: CustomerTable): CustomerRow => ({
  id: row.id,
  name: row.name,
  document: fromText(row.document),
  version: row.version,
  erasedAt: row.erased_at,
});

const PERSONAL_PARTS = Object.entries(HIRE_PARTS)
  .filter(([, { personal }]) => personal)
  .map(([name]) => name);

/** The name stands in the hires too, so that a list of hires is one query. */
async function renameInHires(door: Door, customerId: string, name: string): Promise<void> {
  const hires = await door
    .change("hire", { customer_name: name })
    .where("customer_id", "=", customerId)
    .returning("id")
    .execute();
  for (const { id } of hires) await indexHire(door, id);
}

async function updateCustomer(
  door: Door,
  id: string,
  change: { name: string; document: string },
  version: number,
) {
  const now = await door.from("customer").selectAll().where("id", "=", id).executeTakeFirst();
  if (now === undefined || now.erased_at !== null) return { ok: false, why: "notFound" } as const;
  const { numUpdatedRows } = await door
    .change("customer", { ...change, version: version + 1 })
    .where("id", "=", id)
    .where("version", "=", version)
    .executeTakeFirst();
  if (numUpdatedRows !== 1n) return { ok: false, why: "stale", version: now.version } as const;
  await indexWords(door, "customer_word", id, [change.name]);
  if (now.name !== change.name || now.document !== change.document)
    await renameInHires(door, id, change.name);
  return { ok: true, version: version + 1 } as const;
}

/** Texts that tell who the hirer and the drivers are, for finding them in records. */
async function namesOf(door: Door, { name, document }: CustomerTable, hires: readonly string[]) {
  const { telephone, email } = fromText(document);
  const parts =
    hires.length === 0
      ? []
      : await door
          .from("hire_part")
          .select("document")
          .where("name", "=", "drivers")
          .where("hire_id", "in", hires)
          .execute();
  const drivers = parts.flatMap((part) => {
    const listed = fromText(part.document).drivers;
    return Array.isArray(listed) ? listed.map((each) => (each as { name?: unknown } | null)?.name) : [];
  });
  return [name, telephone, email, ...drivers].filter((each): each is string => typeof each === "string");
}

/** Empties what belongs to the hires of a person who is erased; gives how many records went. */
async function emptyHires(door: Door, hires: readonly string[], names: readonly string[]): Promise<number> {
  const recordsErased = await eraseHires(door, hires, names);
  await door.remove("hire_part").where("hire_id", "in", hires).where("name", "in", PERSONAL_PARTS).execute();
  await door.change("hire_change", { document: "{}" }).where("hire_id", "in", hires).execute();
  await door.change("settlement_entry", { document: "{}" }).where("hire_id", "in", hires).execute();
  // what was found of it names nobody and stays
  await door.change("use_return", { document: "{}" }).where("hire_id", "in", hires).execute();
  await door.change("note", { body: "" }).where("hire_id", "in", hires).execute();
  await door.change("defect_disclosure", { signer: "" }).where("hire_id", "in", hires).execute();
  await door
    .change("hirer_link", { revoked_at: door.now() })
    .where("hire_id", "in", hires)
    .where("revoked_at", "is", null)
    .execute();
  for (const hireId of hires) await eraseLicencesOf(door, hireId);
  await eraseMessagesOf(door, hires);
  return recordsErased;
}

/**
 * Empties the person: their own row, the personal documents of their hires, licence numbers, links, messages, what
 * they signed and said, and the photographs of it; photographs of the vehicle go when their time is over. Payments,
 * overrides and invoices as issued stay. Papers already sent are not touched by this.
 */
export async function eraseCustomer(
  door: Door,
  id: string,
  by: string,
): Promise<{ recordsErased: number } | null> {
  const now = await door.from("customer").selectAll().where("id", "=", id).executeTakeFirst();
  if (now === undefined) return null;
  const hires = (await door.from("hire").select("id").where("customer_id", "=", id).execute()).map(
    (hire) => hire.id,
  );
  const names = await namesOf(door, now, hires);
  const erased = {
    name: "",
    document: "{}",
    version: now.version + 1,
    erased_at: now.erased_at ?? door.now(),
  };
  await door.change("customer", erased).where("id", "=", id).execute();
  await indexWords(door, "customer_word", id, []);
  await renameInHires(door, id, "");
  let recordsErased = hires.length === 0 ? 0 : await emptyHires(door, hires, names);
  const named = await door
    .from("record")
    .select("id")
    .where("person_id", "=", id)
    .where("erased_at", "is", null)
    .execute();
  recordsErased += await eraseRecords(
    door,
    named.map((row) => row.id),
  );
  await rememberErasure(door, "customer", id);
  await door
    .change("erasure_wish", { ended_at: door.now(), ended_as: "erased" })
    .where("customer_id", "=", id)
    .where("ended_at", "is", null)
    .execute();
  await door.afterCommit(async () => door.context.overwrite());
  await writeAudit(door, by, "customer.erase", id, { recordsErased });
  return { recordsErased };
}

export function customersStore(door: Door): Store["customers"] {
  const get = async (id: string) => {
    const row = await door.from("customer").selectAll().where("id", "=", id).executeTakeFirst();
    return row === undefined ? null : read(row);
  };
  return {
    get,
    create: ({ id = uuidv7(), name, document }) =>
      door.within(async (inner) => {
        const row = {
          id,
          name,
          document: toText(document),
          version: 1,
          erased_at: null,
          created_at: inner.now(),
        };
        await inner.insert("customer", row).execute();
        await indexWords(inner, "customer_word", id, [name]);
        return read({ ...row, firm_id: inner.scope.firmId, depot_id: inner.scope.depotId });
      }),
    update: (id, { name, document }, version) =>
      door.within((inner) => updateCustomer(inner, id, { name, document: toText(document) }, version)),
    async search(text, page = {}) {
      const limit = rowsOf(page);
      let query = door.from("customer").selectAll().where("erased_at", "is", null);
      for (const beginning of beginningsOf(text)) {
        const found = door
          .from("customer_word")
          .select("target_id")
          .where("word", ">=", beginning)
          .where("word", "<", endOfBeginning(beginning));
        query = query.where("id", "in", found);
      }
      if (page.after !== undefined) {
        const [name, id] = readCursor(page.after);
        query = query.where((w) =>
          w.or([w("name", ">", name), w.and([w("name", "=", name), w("id", ">", id)])]),
        );
      }
      const rows = await query
        .orderBy("name")
        .orderBy("id")
        .limit(limit + 1)
        .execute();
      return pageOf(rows, limit, read, (last) => [last.name, last.id]);
    },
    erase: (id, by) => door.within((inner) => eraseCustomer(inner, id, by)),
  };
}
