import { type Kysely, sql } from "kysely";
import type { StoreKind } from "../dialects.ts";

/** What was used on hires that are over, set beside its forecast; and the rates that followed for each vehicle. */
export async function useReturns(db: Kysely<unknown>, kind: StoreKind): Promise<void> {
  const text = kind === "postgres" ? sql`text collate "C"` : sql`text`;
  await db.schema
    .createTable("use_return")
    .addColumn("firm_id", text, (c) => c.notNull())
    .addColumn("depot_id", text, (c) => c.notNull())
    .addColumn("id", text, (c) => c.notNull())
    .addColumn("vehicle_id", text, (c) => c.notNull())
    // null for returns from before these books
    .addColumn("hire_id", text)
    .addColumn("returned_at", text, (c) => c.notNull())
    .addColumn("document", text, (c) => c.notNull())
    // null until it has been set beside its forecast; with the engine that did it
    .addColumn("outcome", text)
    .addColumn("engine", text)
    .addPrimaryKeyConstraint("use_return_key", ["firm_id", "depot_id", "id"])
    .addForeignKeyConstraint("use_return_depot", ["firm_id", "depot_id"], "depot", ["firm_id", "depot_id"])
    .execute();
  await db.schema
    .createIndex("use_return_of")
    .on("use_return")
    .columns(["firm_id", "depot_id", "hire_id"])
    .execute();
  await db.schema
    .createTable("use_rate")
    .addColumn("firm_id", text, (c) => c.notNull())
    .addColumn("depot_id", text, (c) => c.notNull())
    .addColumn("vehicle_id", text, (c) => c.notNull())
    .addColumn("document", text, (c) => c.notNull())
    .addColumn("at", text, (c) => c.notNull())
    .addPrimaryKeyConstraint("use_rate_key", ["firm_id", "depot_id", "vehicle_id"])
    .addForeignKeyConstraint("use_rate_depot", ["firm_id", "depot_id"], "depot", ["firm_id", "depot_id"])
    .execute();
}
