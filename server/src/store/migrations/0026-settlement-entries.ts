import { type Kysely, sql } from "kysely";
import type { StoreKind } from "../dialects.ts";

/** What was said and paid about a settlement: disputes and replies, estimates and invoices, second signatures, what is held, lost property. */
export async function settlementEntries(db: Kysely<unknown>, kind: StoreKind): Promise<void> {
  const text = kind === "postgres" ? sql`text collate "C"` : sql`text`;
  const columns: readonly string[] = ["hire_id", "kind", "about", "document", "by_id", "at"];
  let table = db.schema
    .createTable("settlement_entry")
    .addColumn("firm_id", text, (c) => c.notNull())
    .addColumn("depot_id", text, (c) => c.notNull())
    .addColumn("id", text, (c) => c.notNull());
  for (const column of columns) table = table.addColumn(column, text, (c) => c.notNull());
  await table
    .addPrimaryKeyConstraint("settlement_entry_key", ["firm_id", "depot_id", "id"])
    .addForeignKeyConstraint("settlement_entry_depot", ["firm_id", "depot_id"], "depot", [
      "firm_id",
      "depot_id",
    ])
    .execute();
  await db.schema
    .createIndex("settlement_entry_of")
    .on("settlement_entry")
    .columns(["firm_id", "depot_id", "hire_id", "id"])
    .execute();
}
