import { type Kysely, sql } from "kysely";
import type { StoreKind } from "../dialects.ts";

/** A photograph can be removed, with the day and the reason; and what waits for the end of its time is marked. */
export async function removedPhotographs(db: Kysely<unknown>, kind: StoreKind): Promise<void> {
  const text = kind === "postgres" ? sql`text collate "C"` : sql`text`;
  // held_from: instant of the return from which the time counts · bytes_gone_at: the file is gone too
  for (const column of ["held_from", "removed_at", "removed_under", "bytes_gone_at"])
    await db.schema.alterTable("photograph").addColumn(column, text).execute();
  await db.schema.alterTable("record").addColumn("held_from", text).execute();
  await db.schema
    .createIndex("photograph_held")
    .on("photograph")
    .columns(["firm_id", "depot_id", "held_from"])
    .execute();
  await db.schema
    .createIndex("record_held")
    .on("record")
    .columns(["firm_id", "depot_id", "held_from"])
    .execute();
}
