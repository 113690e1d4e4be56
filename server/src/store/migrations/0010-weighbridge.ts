import { type Kysely, sql } from "kysely";
import type { StoreKind } from "../dialects.ts";

/** Weighbridge tickets of a vehicle; one that was typed wrongly is withdrawn, never changed. */
export async function weighbridge(db: Kysely<unknown>, kind: StoreKind): Promise<void> {
  const text = kind === "postgres" ? sql`text collate "C"` : sql`text`;
  await db.schema
    .createTable("weighbridge_ticket")
    .addColumn("firm_id", text, (c) => c.notNull())
    .addColumn("depot_id", text, (c) => c.notNull())
    .addColumn("id", text, (c) => c.notNull())
    .addColumn("vehicle_id", text, (c) => c.notNull())
    .addColumn("weighed_on", text, (c) => c.notNull())
    .addColumn("document", text, (c) => c.notNull())
    .addColumn("by_id", text, (c) => c.notNull())
    .addColumn("at", text, (c) => c.notNull())
    .addColumn("withdrawn_at", text)
    .addPrimaryKeyConstraint("weighbridge_ticket_key", ["firm_id", "depot_id", "id"])
    .addForeignKeyConstraint("weighbridge_ticket_depot", ["firm_id", "depot_id"], "depot", [
      "firm_id",
      "depot_id",
    ])
    .execute();
  await db.schema
    .createIndex("weighbridge_ticket_of")
    .on("weighbridge_ticket")
    .columns(["firm_id", "depot_id", "vehicle_id", "weighed_on", "id"])
    .execute();
}
