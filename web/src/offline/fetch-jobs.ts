import { writeDistancesIn } from "../parts/words.ts";
import type { DeviceDatabase, KeptJob, YardJob } from "./database.ts";

/** fresh: from the server just now · kept: no signal, what this device has · signIn: nobody is signed in */
export type FetchAnswer = "fresh" | "kept" | "signIn";

/** Brings the walk-rounds of the day to this device. What the server no longer lists goes, unless it was begun here. */
export async function fetchJobs(db: DeviceDatabase, request: typeof fetch = fetch): Promise<FetchAnswer> {
  let answer: { readonly date: string; readonly distances?: "km" | "mi"; readonly jobs: readonly YardJob[] };
  try {
    const response = await request("/api/yard/jobs", { credentials: "same-origin" });
    if (response.status === 401 || response.status === 403) return "signIn";
    if (!response.ok) return "kept";
    answer = await response.json();
  } catch {
    return "kept";
  }
  if (answer.distances !== undefined) writeDistancesIn(answer.distances);
  const fetchedAt = new Date().toISOString();
  await db.transaction("rw", db.jobs, db.rounds, async () => {
    const begun = new Set(await db.rounds.toCollection().primaryKeys());
    const listed = new Set(answer.jobs.map(({ id }) => id));
    for (const kept of await db.jobs.toArray()) {
      if (!listed.has(kept.id) && !begun.has(kept.id)) await db.jobs.delete(kept.id);
    }
    await db.jobs.bulkPut(
      answer.jobs.map((job): KeptJob => ({ id: job.id, date: answer.date, job, fetchedAt })),
    );
  });
  return "fresh";
}

/** Brings smaller copies of the pictures of the walks out, so that they can be compared with no signal. */
export async function fetchPictures(db: DeviceDatabase, request: typeof fetch = fetch): Promise<void> {
  const wanted = new Set<string>();
  for (const { job } of await db.jobs.toArray()) {
    for (const record of job.outRecords as readonly { readonly content?: { readonly sha256?: unknown } }[]) {
      if (typeof record.content?.sha256 === "string") wanted.add(record.content.sha256);
    }
  }
  const here = new Set([
    ...(await db.pictures.toCollection().primaryKeys()),
    ...(await db.photographs.toCollection().primaryKeys()),
  ]);
  for (const sha256 of wanted) {
    if (here.has(sha256)) continue;
    try {
      const response = await request(`/api/photos/${sha256}?size=small`, { credentials: "same-origin" });
      if (response.ok) await db.pictures.put({ sha256, bytes: new Uint8Array(await response.arrayBuffer()) });
    } catch {
      return;
    }
  }
}
