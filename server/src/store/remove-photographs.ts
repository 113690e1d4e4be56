import type { Door } from "./door.ts";
import { rememberErasure } from "./erasures.ts";
import { addJob } from "./jobs-store.ts";
import type { PhotographTable, Scoped } from "./tables.ts";
import type { RemovedUnder } from "./types.ts";

/** Kind of the job that removes the files of photographs, and those whose time is over (`files/remove-photographs.ts`). */
export const REMOVE_PHOTOGRAPHS = "removePhotographs";

/** A row for a photograph that has not come: what is to happen to it is known before it does. */
const NOT_HERE = {
  bytes: 0,
  width_px: 0,
  height_px: 0,
  hire_id: null,
  taken_at: null,
  held_from: null,
  removed_at: null,
  removed_under: null,
  bytes_gone_at: null,
} as const satisfies Omit<PhotographTable, keyof Scoped | "sha256" | "received_at">;

const KEY = ["firm_id", "depot_id", "sha256"] as const;

/** Removes photographs for good, by their hashes, whether they came or not; the files follow by a job. */
export async function removePhotographs(
  door: Door,
  hashes: readonly string[],
  under: RemovedUnder,
): Promise<number> {
  const set = { removed_at: door.now(), removed_under: under };
  let removed = 0;
  for (const sha256 of new Set(hashes)) {
    const row = await door
      .insert("photograph", { ...NOT_HERE, ...set, sha256, received_at: door.now() })
      .onConflict((on) => on.columns(KEY).doUpdateSet(set).where("photograph.removed_at", "is", null))
      .returning("sha256")
      .executeTakeFirst();
    if (row === undefined) continue;
    await rememberErasure(door, "photograph", JSON.stringify([sha256, under]));
    removed += 1;
  }
  if (removed > 0) await addJob(door, { kind: REMOVE_PHOTOGRAPHS, payload: {} });
  return removed;
}

/** As the list of erasures names it. */
export function removePhotographNamed(door: Door, targetId: string): Promise<number> {
  const [sha256, under] = JSON.parse(targetId) as [string, RemovedUnder];
  return removePhotographs(door, [sha256], under);
}

/** Marks photographs that stay until the time of their hire is over; of several hires the last counts. */
export async function holdPhotographs(door: Door, hashes: readonly string[], endedAt: string): Promise<void> {
  for (const sha256 of new Set(hashes))
    await door
      .insert("photograph", { ...NOT_HERE, held_from: endedAt, sha256, received_at: door.now() })
      .onConflict((on) =>
        on
          .columns(KEY)
          .doUpdateSet({ held_from: endedAt })
          .where((w) =>
            w.and([
              w("photograph.removed_at", "is", null),
              w.or([w("photograph.held_from", "is", null), w("photograph.held_from", "<", endedAt)]),
            ]),
          ),
      )
      .execute();
  if (hashes.length > 0) await addJob(door, { kind: REMOVE_PHOTOGRAPHS, payload: {} });
}
