import { type Kysely, sql } from "kysely";
import type { StoreKind } from "../dialects.ts";

/** What a depot did to the dated rules; and a note has an owner, a moment at which it reappears, and who ticked it. */
export async function rulesAndNotes(db: Kysely<unknown>, kind: StoreKind): Promise<void> {
  const text = kind === "postgres" ? sql`text collate "C"` : sql`text`;
  await db.schema
    .createTable("rule_change")
    .addColumn("firm_id", text, (c) => c.notNull())
    .addColumn("depot_id", text, (c) => c.notNull())
    .addColumn("id", text, (c) => c.notNull())
    .addColumn("rule_id", text, (c) => c.notNull())
    .addColumn("kind", text, (c) => c.notNull())
    .addColumn("document", text, (c) => c.notNull())
    .addColumn("by_id", text, (c) => c.notNull())
    .addColumn("at", text, (c) => c.notNull())
    .addPrimaryKeyConstraint("rule_change_key", ["firm_id", "depot_id", "id"])
    .addForeignKeyConstraint("rule_change_depot", ["firm_id", "depot_id"], "depot", ["firm_id", "depot_id"])
    .execute();
  for (const column of ["owner", "moment", "done_by"])
    await db.schema.alterTable("note").addColumn(column, text).execute();
}
