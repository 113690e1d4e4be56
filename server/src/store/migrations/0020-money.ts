import { type Kysely, sql } from "kysely";
import type { StoreKind } from "../dialects.ts";

/** The day and the origin of each entry of the ledger; invoices with numbers that run through the firm. */
export async function money(db: Kysely<unknown>, kind: StoreKind): Promise<void> {
  const text = kind === "postgres" ? sql`text collate "C"` : sql`text`;
  await db.schema.alterTable("payment").addColumn("on_day", text).execute();
  await db.schema.alterTable("payment").addColumn("of_id", text).execute();
  await fillDays(db as Kysely<Paid>);
  await db.schema
    .createIndex("payment_on")
    .on("payment")
    .columns(["firm_id", "depot_id", "on_day", "id"])
    .execute();
  await db.schema
    .createTable("firm_counter")
    .addColumn("firm_id", text, (c) => c.notNull().references("firm.firm_id"))
    .addColumn("name", text, (c) => c.notNull())
    .addColumn("counter", "bigint", (c) => c.notNull())
    .addPrimaryKeyConstraint("firm_counter_key", ["firm_id", "name"])
    .execute();
  await invoices(db, text);
}

async function invoices(db: Kysely<unknown>, text: ReturnType<typeof sql>): Promise<void> {
  await db.schema
    .createTable("invoice")
    .addColumn("firm_id", text, (c) => c.notNull())
    .addColumn("depot_id", text, (c) => c.notNull())
    .addColumn("id", text, (c) => c.notNull())
    .addColumn("hire_id", text, (c) => c.notNull())
    .addColumn("series", text, (c) => c.notNull())
    .addColumn("number", "bigint", (c) => c.notNull())
    .addColumn("on_day", text, (c) => c.notNull())
    .addColumn("of_id", text)
    .addColumn("document", text, (c) => c.notNull())
    .addColumn("by_id", text, (c) => c.notNull())
    .addColumn("at", text, (c) => c.notNull())
    .addPrimaryKeyConstraint("invoice_key", ["firm_id", "depot_id", "id"])
    .addForeignKeyConstraint("invoice_depot", ["firm_id", "depot_id"], "depot", ["firm_id", "depot_id"])
    .addForeignKeyConstraint("invoice_hire_id", ["firm_id", "depot_id", "hire_id"], "hire", [
      "firm_id",
      "depot_id",
      "id",
    ])
    .execute();
  await db.schema
    .createIndex("invoice_number")
    .on("invoice")
    .columns(["firm_id", "series", "number"])
    .unique()
    .execute();
  await db.schema
    .createIndex("invoice_hire")
    .on("invoice")
    .columns(["firm_id", "depot_id", "hire_id"])
    .execute();
  await db.schema
    .createIndex("invoice_on")
    .on("invoice")
    .columns(["firm_id", "depot_id", "on_day", "number"])
    .execute();
}

interface Paid {
  payment: {
    firm_id: string;
    depot_id: string;
    id: string;
    document: string;
    at: string;
    on_day: string | null;
  };
}
const AT_ONCE = 500;

/** The day that was entered with a payment; of one without, the day on which it was entered. */
async function fillDays(db: Kysely<Paid>): Promise<void> {
  for (;;) {
    const rows = await db
      .selectFrom("payment")
      .select(["firm_id", "depot_id", "id", "document", "at"])
      .where("on_day", "is", null)
      .limit(AT_ONCE)
      .execute();
    if (rows.length === 0) return;
    for (const { firm_id, depot_id, id, document, at } of rows) {
      const { on } = JSON.parse(document) as { on?: unknown };
      await db
        .updateTable("payment")
        .set({ on_day: typeof on === "string" ? on : at.slice(0, 10) })
        .where("firm_id", "=", firm_id)
        .where("depot_id", "=", depot_id)
        .where("id", "=", id)
        .execute();
    }
  }
}
