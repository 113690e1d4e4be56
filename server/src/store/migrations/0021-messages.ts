import { type Kysely, sql } from "kysely";
import type { StoreKind } from "../dialects.ts";

/** Messages to hirers, calendar links, what came in from calendar files, and vehicles that are only listed yet. */
export async function messages(db: Kysely<unknown>, kind: StoreKind): Promise<void> {
  const text = kind === "postgres" ? sql`text collate "C"` : sql`text`;
  const make = (
    name: string,
    columns: readonly string[],
    optional: readonly string[],
    key: readonly string[],
  ) => {
    let table = db.schema
      .createTable(name)
      .addColumn("firm_id", text, (c) => c.notNull())
      .addColumn("depot_id", text, (c) => c.notNull());
    for (const column of columns) table = table.addColumn(column, text, (c) => c.notNull());
    for (const column of optional) table = table.addColumn(column, text);
    return table
      .addPrimaryKeyConstraint(`${name}_key`, ["firm_id", "depot_id", ...key] as never[])
      .addForeignKeyConstraint(`${name}_depot`, ["firm_id", "depot_id"], "depot", ["firm_id", "depot_id"]);
  };
  const said = ["id", "hire_id", "kind", "language", "to_address", "subject", "body", "attachments"];
  await make(
    "message",
    [...said, "state", "due_at", "dedupe_key", "by_id", "at"],
    ["reason", "sent_at", "response"],
    ["id"],
  )
    .addColumn("attempts", "integer", (c) => c.notNull())
    .addColumn("job_count", "integer", (c) => c.notNull())
    .addColumn("has_job", "integer", (c) => c.notNull())
    .execute();
  const index = (name: string, on: string, columns: readonly string[]) =>
    db.schema
      .createIndex(name)
      .on(on)
      .columns(["firm_id", "depot_id", ...columns])
      .execute();
  const once = (name: string, on: string, columns: readonly string[]) =>
    db.schema
      .createIndex(name)
      .unique()
      .on(on)
      .columns([...columns])
      .execute();
  await once("message_once", "message", ["firm_id", "depot_id", "dedupe_key"]);
  await index("message_of", "message", ["hire_id", "id"]);
  await index("message_due", "message", ["state", "has_job", "due_at"]);
  await make("message_settings", ["document"], [], [])
    .addColumn("version", "integer", (c) => c.notNull())
    .execute();
  await make("calendar_feed", ["id", "token_hash", "kind", "about", "by_id", "at"], ["revoked_at"], ["id"])
    .addColumn("with_names", "integer", (c) => c.notNull())
    .execute();
  await once("calendar_feed_token", "calendar_feed", ["token_hash"]);
  await make("calendar_event", ["vehicle_id", "uid", "block_id", "at"], [], ["vehicle_id", "uid"]).execute();
  await make("vehicle_draft", ["id", "registration", "document", "by_id", "at"], [], ["id"]).execute();
}
