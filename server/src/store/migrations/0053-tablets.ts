import { type Kysely, sql } from "kysely";
import type { StoreKind } from "../dialects.ts";

/** Which tablet keeps what of which hire, so that it can be told what to forget; and erasures that wait. Ids only. */
export async function tablets(db: Kysely<unknown>, kind: StoreKind): Promise<void> {
  const text = kind === "postgres" ? sql`text collate "C"` : sql`text`;
  await db.schema
    .createTable("tablet")
    .addColumn("firm_id", text, (c) => c.notNull())
    .addColumn("depot_id", text, (c) => c.notNull())
    .addColumn("id", text, (c) => c.notNull())
    .addColumn("seen_at", text, (c) => c.notNull())
    // who was signed in there when it was last heard of
    .addColumn("seen_by", text, (c) => c.notNull())
    .addPrimaryKeyConstraint("tablet_key", ["firm_id", "depot_id", "id"])
    .addForeignKeyConstraint("tablet_depot", ["firm_id", "depot_id"], "depot", ["firm_id", "depot_id"])
    .execute();
  await db.schema
    .createTable("tablet_hire")
    .addColumn("firm_id", text, (c) => c.notNull())
    .addColumn("depot_id", text, (c) => c.notNull())
    .addColumn("tablet_id", text, (c) => c.notNull())
    .addColumn("hire_id", text, (c) => c.notNull())
    // null while it keeps something of the hire
    .addColumn("forgotten_at", text)
    .addPrimaryKeyConstraint("tablet_hire_key", ["firm_id", "depot_id", "tablet_id", "hire_id"])
    .addForeignKeyConstraint("tablet_hire_of", ["firm_id", "depot_id", "tablet_id"], "tablet", [
      "firm_id",
      "depot_id",
      "id",
    ])
    .execute();
  await db.schema
    .createIndex("tablet_hire_hire")
    .on("tablet_hire")
    .columns(["firm_id", "depot_id", "hire_id"])
    .execute();
  await db.schema
    .createTable("erasure_wish")
    .addColumn("firm_id", text, (c) => c.notNull())
    .addColumn("depot_id", text, (c) => c.notNull())
    .addColumn("id", text, (c) => c.notNull())
    .addColumn("customer_id", text, (c) => c.notNull())
    .addColumn("asked_by", text, (c) => c.notNull())
    .addColumn("asked_at", text, (c) => c.notNull())
    // null while it waits
    .addColumn("ended_at", text)
    .addColumn("ended_as", text)
    .addPrimaryKeyConstraint("erasure_wish_key", ["firm_id", "depot_id", "id"])
    .addForeignKeyConstraint("erasure_wish_depot", ["firm_id", "depot_id"], "depot", ["firm_id", "depot_id"])
    .execute();
}
