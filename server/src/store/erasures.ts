import type { Door } from "./door.ts";
import type { Erasure } from "./types.ts";

/** Writes an erasure to the list; the list holds ids only. */
export async function rememberErasure(door: Door, kind: Erasure["kind"], targetId: string): Promise<void> {
  const at = door.now();
  const added = await door
    .insert("erasure", { kind, target_id: targetId, at })
    .onConflict((on) => on.columns(["firm_id", "depot_id", "kind", "target_id"]).doNothing())
    .returning("at")
    .executeTakeFirst();
  if (added === undefined) return;
  await door.afterCommit(() => door.context.onErasure({ ...door.scope, kind, targetId, at }));
}
