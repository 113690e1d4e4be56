import { type Kysely, sql } from "kysely";
import type { StoreKind } from "../dialects.ts";

/** What was done to a vehicle and read off it, its defects, and which hirer was told of them. */
export async function upkeep(db: Kysely<unknown>, kind: StoreKind): Promise<void> {
  const text = kind === "postgres" ? sql`text collate "C"` : sql`text`;
  const make = async (name: string, columns: readonly string[], optional: readonly string[]) => {
    let table = db.schema
      .createTable(name)
      .addColumn("firm_id", text, (c) => c.notNull())
      .addColumn("depot_id", text, (c) => c.notNull())
      .addColumn("id", text, (c) => c.notNull());
    for (const column of columns) table = table.addColumn(column, text, (c) => c.notNull());
    for (const column of optional) table = table.addColumn(column, text);
    await table
      .addPrimaryKeyConstraint(`${name}_key`, ["firm_id", "depot_id", "id"])
      .addForeignKeyConstraint(`${name}_depot`, ["firm_id", "depot_id"], "depot", ["firm_id", "depot_id"])
      .execute();
  };
  const index = (name: string, on: string, columns: readonly string[]) =>
    db.schema
      .createIndex(name)
      .on(on)
      .columns(["firm_id", "depot_id", ...columns])
      .execute();
  await make("upkeep_entry", ["vehicle_id", "kind", "on_day", "document", "by_id", "at"], []);
  await index("upkeep_entry_of", "upkeep_entry", ["vehicle_id", "on_day", "id"]);
  await make(
    "defect",
    ["vehicle_id", "class", "document", "by_id", "at"],
    ["hire_id", "closed_at", "closed_by", "closed_how"],
  );
  await index("defect_of", "defect", ["vehicle_id", "closed_at"]);
  await make("defect_disclosure", ["defect_id", "hire_id", "signer", "by_id", "at"], []);
  await index("defect_disclosure_of", "defect_disclosure", ["hire_id"]);
}
