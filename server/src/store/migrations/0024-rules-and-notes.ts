import { type Kysely, sql } from "kysely";
import type { StoreKind } from "../dialects.ts";

/** What a depot did to the dated rules; and a note has an owner, a moment at which it reappears, and who ticked it. */
export async function rulesAndNotes(db: Kysely<unknown>, kind: StoreKind): Promise<void> {
  const text = kind === "postgres" ? sql`text collate "C"` : sql`text`;
  let table = db.schema.createTable("rule_change");
  for (const column of ["firm_id", "depot_id", "id", "rule_id", "kind", "document", "by_id", "at"])
    table = table.addColumn(column, text, (c) => c.notNull());
  await table
    .addPrimaryKeyConstraint("rule_change_key", ["firm_id", "depot_id", "id"])
    .addForeignKeyConstraint("rule_change_depot", ["firm_id", "depot_id"], "depot", ["firm_id", "depot_id"])
    .execute();
  for (const column of ["owner", "moment", "done_by"])
    await db.schema.alterTable("note").addColumn(column, text).execute();
}
