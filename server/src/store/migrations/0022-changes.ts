import { type Kysely, sql } from "kysely";
import type { StoreKind } from "../dialects.ts";

/** What changed about a hire after it was booked: another vehicle, later, earlier, an accident, a notice. */
export async function changes(db: Kysely<unknown>, kind: StoreKind): Promise<void> {
  const text = kind === "postgres" ? sql`text collate "C"` : sql`text`;
  const columns: readonly string[] = ["hire_id", "kind", "document", "by_id", "at"];
  let table = db.schema
    .createTable("hire_change")
    .addColumn("firm_id", text, (c) => c.notNull())
    .addColumn("depot_id", text, (c) => c.notNull())
    .addColumn("id", text, (c) => c.notNull());
  for (const column of columns) table = table.addColumn(column, text, (c) => c.notNull());
  await table
    .addPrimaryKeyConstraint("hire_change_key", ["firm_id", "depot_id", "id"])
    .addForeignKeyConstraint("hire_change_depot", ["firm_id", "depot_id"], "depot", ["firm_id", "depot_id"])
    .execute();
  await db.schema
    .createIndex("hire_change_of")
    .on("hire_change")
    .columns(["firm_id", "depot_id", "hire_id", "id"])
    .execute();
}
