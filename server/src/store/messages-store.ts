import { uuidv7 } from "uuidv7";
import { fromText, pageOf, readCursor, rowsOf, toInstantText, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import { addJob } from "./jobs-store.ts";
import type { MessageChange, MessageRow, MessagesStore, NewMessage } from "./message-types.ts";
import type { MessageTable } from "./tables.ts";

/** The job that sends one message. */
export const SEND_MESSAGE = "message.send";

const read = (row: MessageTable): MessageRow => ({
  id: row.id,
  hireId: row.hire_id,
  kind: row.kind as MessageRow["kind"], // written from a NewMessage only
  language: row.language as MessageRow["language"],
  to: row.to_address,
  subject: row.subject,
  body: row.body,
  attachments: JSON.parse(row.attachments) as string[],
  state: row.state as MessageRow["state"],
  dueAt: row.due_at,
  reason: row.reason,
  sentAt: row.sent_at,
  response: row.response,
  attempts: row.attempts,
  by: row.by_id,
  at: row.at,
});

async function addMessage(door: Door, message: NewMessage): Promise<MessageRow | null> {
  const added = await door
    .insert("message", {
      id: uuidv7(),
      hire_id: message.hireId,
      kind: message.kind,
      language: message.language,
      to_address: message.to,
      subject: message.subject,
      body: message.body,
      attachments: JSON.stringify(message.attachments),
      state: "waiting",
      due_at: toInstantText(message.dueAt, "dueAt"),
      dedupe_key: message.dedupeKey,
      by_id: message.by,
      at: door.now(),
      reason: null,
      sent_at: null,
      response: null,
      attempts: 0,
      job_count: 0,
      has_job: 0,
    })
    .onConflict((on) => on.columns(["firm_id", "depot_id", "dedupe_key"]).doNothing())
    .returningAll()
    .executeTakeFirst();
  return added === undefined ? null : read(added as MessageTable);
}

/** What changes, and only from one of the states it may come from: the database decides a race. */
async function moveMessage(door: Door, id: string, from: readonly string[], to: MessageChange) {
  const { numUpdatedRows } = await door
    .change("message", {
      state: to.state,
      ...(to.reason === undefined ? {} : { reason: to.reason?.replaceAll("\0", "").slice(0, 2000) ?? null }),
      ...(to.sentAt === undefined ? {} : { sent_at: toInstantText(to.sentAt, "sentAt") }),
      ...(to.response === undefined ? {} : { response: to.response.replaceAll("\0", "").slice(0, 2000) }),
      ...(to.attempts === undefined ? {} : { attempts: to.attempts }),
    })
    .where("id", "=", id)
    .where("state", "in", [...from])
    .executeTakeFirst();
  return numUpdatedRows === 1n;
}

/** A job of its own for each time: the queue keeps the name of a job for ever. */
async function addSendJob(door: Door, id: string, runAt: string): Promise<boolean> {
  const taken = await door
    .change("message", { has_job: 1 })
    .where("id", "=", id)
    .where("has_job", "=", 0)
    .where("state", "=", "waiting")
    .returning("job_count")
    .executeTakeFirst();
  if (taken === undefined) return false;
  const count = taken.job_count + 1;
  await door.change("message", { job_count: count }).where("id", "=", id).execute();
  await addJob(door, {
    kind: SEND_MESSAGE,
    payload: { id },
    runAt,
    dedupeKey: `${SEND_MESSAGE}:${id}:${count}`,
  });
  return true;
}

function listMessages(door: Door): MessagesStore["list"] {
  return async (filter = {}) => {
    const limit = rowsOf(filter);
    let query = door
      .from("message")
      .selectAll()
      .orderBy("id", "desc")
      .limit(limit + 1);
    if (filter.states !== undefined) query = query.where("state", "in", [...filter.states]);
    if (filter.hireId !== undefined) query = query.where("hire_id", "=", filter.hireId);
    if (filter.after !== undefined) query = query.where("id", "<", readCursor(filter.after)[1]);
    const rows = await query.execute();
    return pageOf(rows, limit, read, (last) => [last.at, last.id]);
  };
}

/** Messages to hirers, each with what became of it. */
export function messagesStore(door: Door): MessagesStore {
  return {
    add: (message) => addMessage(door, message),
    async get(id) {
      const row = await door.from("message").selectAll().where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : read(row);
    },
    async byKey(dedupeKey) {
      const row = await door
        .from("message")
        .selectAll()
        .where("dedupe_key", "=", dedupeKey)
        .executeTakeFirst();
      return row === undefined ? null : read(row);
    },
    list: listMessages(door),
    async knownKeys(keys) {
      const known = new Set<string>();
      for (let start = 0; start < keys.length; start += 200) {
        const rows = await door
          .from("message")
          .select("dedupe_key")
          .where("dedupe_key", "in", keys.slice(start, start + 200))
          .execute();
        for (const row of rows) known.add(row.dedupe_key);
      }
      return known;
    },
    move: (id, from, to) => moveMessage(door, id, from, to),
    addJob: (id, runAt) => door.within((inner) => addSendJob(inner, id, runAt)),
    async dropJob(id) {
      await door.change("message", { has_job: 0 }).where("id", "=", id).execute();
    },
    async withoutJob(limit) {
      const rows = await door
        .from("message")
        .selectAll()
        .where("state", "=", "waiting")
        .where("has_job", "=", 0)
        .orderBy("due_at")
        .orderBy("id")
        .limit(limit)
        .execute();
      return rows.map(read);
    },
    async settings() {
      const row = await door.from("message_settings").selectAll().executeTakeFirst();
      return row === undefined
        ? { document: {}, version: 0 }
        : { document: fromText(row.document), version: row.version };
    },
    async putSettings(document, version) {
      if (version === 0) {
        const added = await door
          .insert("message_settings", { document: toText(document), version: 1 })
          .onConflict((on) => on.columns(["firm_id", "depot_id"]).doNothing())
          .returning("version")
          .executeTakeFirst();
        return added !== undefined;
      }
      const { numUpdatedRows } = await door
        .change("message_settings", { document: toText(document), version: version + 1 })
        .where("version", "=", version)
        .executeTakeFirst();
      return numUpdatedRows === 1n;
    },
  };
}

/** The person was erased: what was written to them goes, that something was written stays. */
export async function eraseMessagesOf(door: Door, hireIds: readonly string[]): Promise<void> {
  if (hireIds.length === 0) return;
  await door
    .change("message", { to_address: "", subject: "", body: "", reason: null, response: null })
    .where("hire_id", "in", [...hireIds])
    .execute();
  await door
    .change("calendar_feed", { revoked_at: door.now() })
    .where("kind", "=", "hire")
    .where("about", "in", [...hireIds])
    .where("revoked_at", "is", null)
    .execute();
  await door
    .change("message", { state: "withdrawn" })
    .where("hire_id", "in", [...hireIds])
    .where("state", "in", ["waiting", "failed"])
    .execute();
}
