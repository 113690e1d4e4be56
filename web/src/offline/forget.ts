import type { DeviceDatabase, YardJob } from "./database.ts";
import { deviceId } from "./device.ts";

/** What this tablet has forgotten last, for whoever looks at it. */
export interface Forgotten {
  /** instant */
  readonly at: string;
  readonly hires: number;
}

/** fresh: the depot was asked · later: no signal, nobody is signed in, or the server is ill */
export interface ForgetAnswer {
  readonly outcome: "fresh" | "later";
  readonly forgotten: number;
  /** hires of erased persons of which something waits to be sent first */
  readonly waiting: number;
}

const FORGOTTEN = "forgotten";
const LATER: ForgetAnswer = { outcome: "later", forgotten: 0, waiting: 0 };

/** The hire that a chain or a walk-round of the yard is of: `<hire>.out`, `<hire>~1.back`, `<hire>.turnaround`. */
const hireOf = (chain: string): string => chain.split(/[.~]/, 1)[0] ?? "";

/** Hires of which this tablet keeps something as a tablet of the yard; what came by a hirer's link is the hirer's own. */
export async function hiresKept(db: DeviceDatabase): Promise<readonly string[]> {
  const kept = new Set<string>();
  for (const { job } of await db.jobs.toArray()) kept.add(job.hireId ?? hireOf(job.id));
  for (const jobId of await db.rounds.toCollection().primaryKeys()) kept.add(hireOf(jobId));
  for (const id of await db.turnarounds.toCollection().primaryKeys()) kept.add(hireOf(id));
  for (const { chain } of await db.records.filter(({ via }) => via === "staff").toArray())
    kept.add(hireOf(chain));
  return [...kept].filter((id) => id !== "").sort();
}

const picturesOf = ({ outRecords }: YardJob): readonly string[] =>
  (outRecords as readonly { readonly content?: { readonly sha256?: unknown } }[]).flatMap(({ content }) =>
    typeof content?.sha256 === "string" ? [content.sha256] : [],
  );

/** Whether something of a hire is still to be sent: the depot takes it first, and erases of it what goes. */
async function waits(db: DeviceDatabase, hireId: string): Promise<boolean> {
  const is = ({ chain, state }: { readonly chain: string; readonly state: string }) =>
    hireOf(chain) === hireId && state === "waiting";
  return (await db.records.filter(is).count()) + (await db.photographs.filter(is).count()) > 0;
}

/** Everything of a hire goes from this tablet at once: walk-round, records, photographs, and pictures to compare with. */
async function forgetHire(db: DeviceDatabase, hireId: string): Promise<void> {
  const isOf = ({ chain }: { readonly chain: string }) => hireOf(chain) === hireId;
  const jobs = (await db.jobs.toArray()).map(({ job }) => job);
  const gone = jobs.filter((job) => (job.hireId ?? hireOf(job.id)) === hireId);
  const stillShown = new Set(jobs.filter((job) => !gone.includes(job)).flatMap(picturesOf));
  await db.pictures.bulkDelete(gone.flatMap(picturesOf).filter((sha256) => !stillShown.has(sha256)));
  await db.jobs.bulkDelete(gone.map(({ id }) => id));
  await db.rounds.filter(({ jobId }) => hireOf(jobId) === hireId).delete();
  await db.turnarounds.filter(({ id }) => hireOf(id) === hireId).delete();
  await db.records.filter((record) => record.via === "staff" && isOf(record)).delete();
  await db.photographs.filter(isOf).delete();
}

async function forget(
  db: DeviceDatabase,
  hireIds: readonly string[],
): Promise<Omit<ForgetAnswer, "outcome">> {
  const tables = [db.jobs, db.rounds, db.turnarounds, db.records, db.photographs, db.pictures, db.settings];
  return db.transaction("rw", tables, async () => {
    let forgotten = 0;
    for (const id of hireIds) {
      if (await waits(db, id)) continue;
      await forgetHire(db, id);
      forgotten += 1;
    }
    if (forgotten > 0) {
      const value: Forgotten = { at: new Date().toISOString(), hires: forgotten };
      await db.settings.put({ key: FORGOTTEN, value });
    }
    return { forgotten, waiting: hireIds.length - forgotten };
  });
}

/** What was forgotten here last; null where nothing ever was. */
export async function lastForgotten(db: DeviceDatabase): Promise<Forgotten | null> {
  return ((await db.settings.get(FORGOTTEN))?.value as Forgotten | undefined) ?? null;
}

/**
 * Tells the depot of which hires this tablet keeps something, forgets those whose person was erased, and tells it again
 * so that the depot knows. What still waits to be sent is sent first: it is forgotten the next time.
 */
export async function askWhatToForget(
  db: DeviceDatabase,
  request: typeof fetch = fetch,
): Promise<ForgetAnswer> {
  const named = await ask(db, request);
  if (named === null) return LATER;
  if (named.length === 0) return { outcome: "fresh", forgotten: 0, waiting: 0 };
  const done = await forget(db, named);
  if (done.forgotten > 0) await ask(db, request);
  return { outcome: "fresh", ...done };
}

async function ask(db: DeviceDatabase, request: typeof fetch): Promise<readonly string[] | null> {
  try {
    const response = await request("/api/yard/kept", {
      method: "POST",
      headers: { "content-type": "application/json" },
      credentials: "same-origin",
      body: JSON.stringify({ tabletId: await deviceId(db), hires: await hiresKept(db) }),
    });
    if (!response.ok) return null;
    return ((await response.json()) as { readonly forget: readonly string[] }).forget;
  } catch {
    return null;
  }
}
