import { type Kysely, sql } from "kysely";
import type { StoreKind } from "../dialects.ts";

/** Things that travel with hires: what there is, which hire has which then, and what happened to each. */
export async function stock(db: Kysely<unknown>, kind: StoreKind): Promise<void> {
  const text = kind === "postgres" ? sql`text collate "C"` : sql`text`;
  const make = (name: string) =>
    db.schema
      .createTable(name)
      .addColumn("firm_id", text, (c) => c.notNull())
      .addColumn("depot_id", text, (c) => c.notNull())
      .addColumn("id", text, (c) => c.notNull())
      .addPrimaryKeyConstraint(`${name}_key`, ["firm_id", "depot_id", "id"])
      .addForeignKeyConstraint(`${name}_depot`, ["firm_id", "depot_id"], "depot", ["firm_id", "depot_id"]);
  await make("stock_item")
    .addColumn("kind", text, (c) => c.notNull())
    .addColumn("name", text, (c) => c.notNull())
    .addColumn("size", text)
    .addColumn("count", "integer", (c) => c.notNull())
    .addColumn("expires_on", text)
    .addColumn("retired_on", text)
    .addColumn("document", text, (c) => c.notNull())
    .addColumn("version", "integer", (c) => c.notNull())
    .execute();
  await make("stock_hold")
    .addColumn("item_id", text, (c) => c.notNull())
    .addColumn("hire_id", text, (c) => c.notNull())
    .addColumn("count", "integer", (c) => c.notNull())
    .addColumn("from_at", text, (c) => c.notNull())
    .addColumn("to_at", text, (c) => c.notNull())
    .addColumn("packed_at", text)
    .execute();
  await make("stock_event")
    .addColumn("item_id", text, (c) => c.notNull())
    .addColumn("act", text, (c) => c.notNull())
    .addColumn("document", text, (c) => c.notNull())
    .addColumn("by_id", text, (c) => c.notNull())
    .addColumn("at", text, (c) => c.notNull())
    .execute();
  const index = (name: string, on: string, columns: readonly string[]) =>
    db.schema
      .createIndex(name)
      .on(on)
      .columns(["firm_id", "depot_id", ...columns])
      .execute();
  await index("stock_hold_of", "stock_hold", ["hire_id"]);
  await index("stock_hold_to", "stock_hold", ["to_at"]);
  await index("stock_event_of", "stock_event", ["item_id", "id"]);
}
