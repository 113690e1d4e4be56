import type { Kysely, Selectable } from "kysely";
import { uuidv7 } from "uuidv7";
import { MOST_ATTEMPTS, waitSeconds } from "../jobs/backoff.ts";
import { fromText, toInstantText, toText } from "./codec.ts";
import type { StoreKind } from "./dialects.ts";
import type { Door } from "./door.ts";
import type { JobTable, Tables } from "./tables.ts";
import type { JobQueue, JobRow, NewJob } from "./types.ts";

const read = (row: Selectable<JobTable>): JobRow => ({
  id: row.id,
  firmId: row.firm_id,
  depotId: row.depot_id,
  kind: row.kind,
  payload: fromText(row.payload),
  runAt: row.run_at,
  attempts: row.attempts,
  state: row.state as JobRow["state"], // written here only
  lockedUntil: row.locked_until,
  lastError: row.last_error,
  dedupeKey: row.dedupe_key,
});

export async function addJob(door: Door, job: NewJob): Promise<{ readonly added: boolean }> {
  const added = await door
    .insert("job", {
      id: uuidv7(),
      kind: job.kind,
      payload: toText(job.payload),
      run_at: job.runAt === undefined ? door.now() : toInstantText(job.runAt, "runAt"),
      attempts: 0,
      state: "waiting",
      locked_until: null,
      last_error: null,
      dedupe_key: job.dedupeKey ?? null,
      created_at: door.now(),
      finished_at: null,
    })
    .onConflict((on) => on.columns(["firm_id", "depot_id", "dedupe_key"]).doNothing())
    .returning("id")
    .executeTakeFirst();
  return { added: added !== undefined };
}

const later = (instant: string, seconds: number) =>
  new Date(Date.parse(instant) + seconds * 1000).toISOString();

/** The queue of all depots: a worker takes what is due, whoever's it is. */
export function jobQueue(db: Kysely<Tables>, kind: StoreKind, now: () => string): JobQueue {
  const bury = () =>
    db
      .updateTable("job")
      .set({
        state: "dead",
        locked_until: null,
        finished_at: now(),
        last_error: "ended without a word at every attempt",
      })
      .where("state", "=", "waiting")
      .where("attempts", ">=", MOST_ATTEMPTS)
      .where("locked_until", "<=", now())
      .execute();
  return {
    async claim(count, leaseSeconds) {
      await bury();
      const at = now();
      const due = db
        .selectFrom("job")
        .select("id")
        .where("state", "=", "waiting")
        .where("run_at", "<=", at)
        .where((w) => w.or([w("locked_until", "is", null), w("locked_until", "<=", at)]))
        .orderBy("run_at")
        .orderBy("id")
        .limit(count);
      const rows = await db
        .updateTable("job")
        .set((set) => ({ locked_until: later(at, leaseSeconds), attempts: set("attempts", "+", 1) }))
        .where("id", "in", kind === "postgres" ? due.forUpdate().skipLocked() : due)
        .returningAll()
        .execute();
      return rows.map(read).sort((a, b) => (`${a.runAt} ${a.id}` < `${b.runAt} ${b.id}` ? -1 : 1));
    },
    async finish(id) {
      await db
        .updateTable("job")
        .set({ state: "done", locked_until: null, finished_at: now() })
        .where("id", "=", id)
        .where("state", "=", "waiting")
        .execute();
    },
    async fail(id, error) {
      const row = await db.selectFrom("job").select("attempts").where("id", "=", id).executeTakeFirst();
      if (row === undefined) return;
      const isLast = row.attempts >= MOST_ATTEMPTS;
      await db
        .updateTable("job")
        .set({
          last_error: error.replaceAll("\0", "").slice(0, 2000),
          locked_until: null,
          ...(isLast
            ? { state: "dead", finished_at: now() }
            : { run_at: later(now(), waitSeconds(row.attempts)) }),
        })
        .where("id", "=", id)
        .where("state", "=", "waiting")
        .execute();
    },
    async counts() {
      const rows = await db
        .selectFrom("job")
        .select((s) => ["state", s.fn.countAll<number>().as("n")])
        .groupBy("state")
        .execute();
      const of = (state: string) => Number(rows.find((row) => row.state === state)?.n ?? 0);
      return { waiting: of("waiting"), done: of("done"), dead: of("dead") };
    },
  };
}
