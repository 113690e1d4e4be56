import { type Kysely, sql } from "kysely";
import type { StoreKind } from "../dialects.ts";
import { wordsOf } from "../words.ts";

/** Periods in which a vehicle is not for hire; and hires are found by the telephone number as well. */
export async function diary(db: Kysely<unknown>, kind: StoreKind): Promise<void> {
  const text = kind === "postgres" ? sql`text collate "C"` : sql`text`;
  await db.schema
    .createTable("vehicle_block")
    .addColumn("firm_id", text, (c) => c.notNull())
    .addColumn("depot_id", text, (c) => c.notNull())
    .addColumn("id", text, (c) => c.notNull())
    .addColumn("vehicle_id", text, (c) => c.notNull())
    .addColumn("kind", text, (c) => c.notNull())
    .addColumn("note", text, (c) => c.notNull())
    .addColumn("from_at", text, (c) => c.notNull())
    .addColumn("to_at", text, (c) => c.notNull())
    .addColumn("by_id", text, (c) => c.notNull())
    .addColumn("at", text, (c) => c.notNull())
    .addPrimaryKeyConstraint("vehicle_block_key", ["firm_id", "depot_id", "id"])
    .addForeignKeyConstraint("vehicle_block_depot", ["firm_id", "depot_id"], "depot", ["firm_id", "depot_id"])
    .execute();
  await db.schema
    .createIndex("vehicle_block_of")
    .on("vehicle_block")
    .columns(["firm_id", "depot_id", "vehicle_id", "from_at"])
    .execute();
  await db.schema
    .createIndex("vehicle_block_to")
    .on("vehicle_block")
    .columns(["firm_id", "depot_id", "to_at"])
    .execute();
  await db.schema.createIndex("hire_to").on("hire").columns(["firm_id", "depot_id", "to_at", "id"]).execute();
  await indexTelephones(db as Kysely<Telephoned>);
}

interface Telephoned {
  customer: { firm_id: string; depot_id: string; id: string; document: string };
  hire: { firm_id: string; depot_id: string; id: string; customer_id: string | null };
  hire_word: { firm_id: string; depot_id: string; target_id: string; word: string };
}

const AT_ONCE = 500;

/** As the store does it for every hire from now on. */
async function indexTelephones(db: Kysely<Telephoned>): Promise<void> {
  for (let after = ""; ; ) {
    const rows = await db
      .selectFrom("hire")
      .innerJoin("customer", (join) =>
        join
          .onRef("customer.id", "=", "hire.customer_id")
          .onRef("customer.firm_id", "=", "hire.firm_id")
          .onRef("customer.depot_id", "=", "hire.depot_id"),
      )
      .select(["hire.firm_id", "hire.depot_id", "hire.id", "customer.document"])
      .where("hire.id", ">", after)
      .orderBy("hire.id")
      .limit(AT_ONCE)
      .execute();
    for (const { firm_id, depot_id, id, document } of rows) {
      const { telephone } = JSON.parse(document) as { telephone?: unknown };
      const words = typeof telephone === "string" ? wordsOf([telephone]) : [];
      if (words.length === 0) continue;
      await db
        .insertInto("hire_word")
        .values(words.map((word) => ({ firm_id, depot_id, target_id: id, word })))
        .onConflict((on) => on.doNothing())
        .execute();
    }
    const last = rows.at(-1);
    if (last === undefined) return;
    after = last.id;
  }
}
