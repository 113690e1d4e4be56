import { type AnyRecord, eraseRecord } from "@setfair/records";
import type { Door } from "./door.ts";
import { rememberErasure } from "./erasures.ts";

/** Salt and content go together; hash and place stay. Returns how many were erased now. */
export async function eraseRecords(door: Door, ids: readonly string[]): Promise<number> {
  let erased = 0;
  for (const id of new Set(ids)) {
    const row = await door
      .from("record")
      .select("body")
      .where("id", "=", id)
      .where("erased_at", "is", null)
      .executeTakeFirst();
    if (row === undefined) continue;
    const at = door.now();
    const body = JSON.stringify(eraseRecord(JSON.parse(row.body) as AnyRecord, at));
    await door.change("record", { body, erased_at: at }).where("id", "=", id).execute();
    await rememberErasure(door, "record", id);
    erased += 1;
  }
  return erased;
}
