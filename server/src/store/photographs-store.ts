import { toInstantText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { PhotographTable } from "./tables.ts";
import type { PhotographRow, Store } from "./types.ts";

const read = (row: PhotographTable): PhotographRow => ({
  sha256: row.sha256,
  bytes: row.bytes,
  widthPx: row.width_px,
  heightPx: row.height_px,
  hireId: row.hire_id,
  takenAt: row.taken_at,
  receivedAt: row.received_at,
});

/** What is known of a photograph; its bytes lie in `files/`. */
export function photographsStore(door: Door): Store["photographs"] {
  const get = async (sha256: string) => {
    const row = await door.from("photograph").selectAll().where("sha256", "=", sha256).executeTakeFirst();
    return row === undefined ? null : read(row);
  };
  return {
    get,
    async add({ sha256, bytes, widthPx, heightPx, hireId, takenAt }) {
      await door
        .insert("photograph", {
          sha256,
          bytes,
          width_px: widthPx,
          height_px: heightPx,
          hire_id: hireId,
          taken_at: takenAt === null ? null : toInstantText(takenAt, "takenAt"),
          received_at: door.now(),
        })
        .onConflict((on) => on.columns(["firm_id", "depot_id", "sha256"]).doNothing())
        .execute();
      return (await get(sha256))!;
    },
    async ofHire(hireId) {
      const rows = await door
        .from("photograph")
        .selectAll()
        .where("hire_id", "=", hireId)
        .orderBy("received_at")
        .orderBy("sha256")
        .execute();
      return rows.map(read);
    },
  };
}
