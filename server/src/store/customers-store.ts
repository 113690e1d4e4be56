import { uuidv7 } from "uuidv7";
import { writeAudit } from "./audit-store.ts";
import { fromText, pageOf, readCursor, rowsOf, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import { rememberErasure } from "./erasures.ts";
import { indexHire } from "./hires-store.ts";
import { eraseLicencesOf } from "./licences-store.ts";
import { eraseMessagesOf } from "./messages-store.ts";
import { eraseRecords } from "./records-store.ts";
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
async function renameInHires(door: Door, customerId: string, name: string): Promise<readonly string[]> {
  const hires = await door
    .change("hire", { customer_name: name })
    .where("customer_id", "=", customerId)
    .returning("id")
    .execute();
  for (const { id } of hires) await indexHire(door, id);
  return hires.map(({ id }) => id);
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

/**
 * Empties the person: their own row, the personal documents of their hires, licence numbers, links, and the
 * records that name them. Payments and overrides stay: they name nobody. Photographs and signed papers already
 * sent are not touched by this.
 */
export async function eraseCustomer(
  door: Door,
  id: string,
  by: string,
): Promise<{ recordsErased: number } | null> {
  const now = await door.from("customer").selectAll().where("id", "=", id).executeTakeFirst();
  if (now === undefined) return null;
  const erased = {
    name: "",
    document: "{}",
    version: now.version + 1,
    erased_at: now.erased_at ?? door.now(),
  };
  await door.change("customer", erased).where("id", "=", id).execute();
  await indexWords(door, "customer_word", id, []);
  const hires = await renameInHires(door, id, "");
  if (hires.length > 0) {
    await door
      .remove("hire_part")
      .where("hire_id", "in", hires)
      .where("name", "in", PERSONAL_PARTS)
      .execute();
    await door.change("hire_change", { document: "{}" }).where("hire_id", "in", hires).execute();
    await door.change("settlement_entry", { document: "{}" }).where("hire_id", "in", hires).execute();
    // what was found of it names nobody and stays
    await door.change("use_return", { document: "{}" }).where("hire_id", "in", hires).execute();
    await door.change("note", { body: "" }).where("hire_id", "in", hires).execute();
    await door
      .change("hirer_link", { revoked_at: door.now() })
      .where("hire_id", "in", hires)
      .where("revoked_at", "is", null)
      .execute();
    for (const hireId of hires) await eraseLicencesOf(door, hireId);
    await eraseMessagesOf(door, hires);
  }
  const named = await door
    .from("record")
    .select("id")
    .where("person_id", "=", id)
    .where("erased_at", "is", null)
    .execute();
  const recordsErased = await eraseRecords(
    door,
    named.map((row) => row.id),
  );
  await rememberErasure(door, "customer", id);
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
