import { toInstantText } from "./codec.ts";
import type { Door } from "./door.ts";
import { eraseRecords } from "./erase-records.ts";
import { removePhotographs } from "./remove-photographs.ts";
import type { PhotographTable } from "./tables.ts";
import type { PhotographRow, RemovedUnder, Store } from "./types.ts";

const read = (row: PhotographTable): PhotographRow => ({
  sha256: row.sha256,
  bytes: row.bytes,
  widthPx: row.width_px,
  heightPx: row.height_px,
  hireId: row.hire_id,
  takenAt: row.taken_at,
  receivedAt: row.received_at,
  removed:
    row.removed_at === null
      ? null
      : { at: row.removed_at, under: row.removed_under as RemovedUnder /* written here only */ },
});

/** Entries of a settlement whose photographs show a paper and not the vehicle. */
const PAPER_ENTRIES = ["estimate", "invoice", "loss", "notice"] as const;

/** A row that only says what is to happen to a photograph that never came. */
const isHere = ({ bytes, removed_at }: PhotographTable): boolean => bytes > 0 || removed_at !== null;

/** Removes what is held for hires that ended by then, with the records that wait for the same day. */
async function letGo(door: Door, endedUntil: string): Promise<number> {
  const photographs = await door
    .from("photograph")
    .select("sha256")
    .where("held_from", "<=", endedUntil)
    .where("removed_at", "is", null)
    .execute();
  const records = await door
    .from("record")
    .select("id")
    .where("held_from", "<=", endedUntil)
    .where("erased_at", "is", null)
    .execute();
  await eraseRecords(
    door,
    records.map(({ id }) => id),
  );
  await door.afterCommit(async () => door.context.overwrite());
  return removePhotographs(
    door,
    photographs.map(({ sha256 }) => sha256),
    "retention",
  );
}

/** What is known of a photograph; its bytes lie in `files/`. */
export function photographsStore(door: Door): Store["photographs"] {
  const get = async (sha256: string) => {
    const row = await door.from("photograph").selectAll().where("sha256", "=", sha256).executeTakeFirst();
    return row === undefined || !isHere(row) ? null : read(row);
  };
  return {
    get,
    async add({ sha256, bytes, widthPx, heightPx, hireId, takenAt }) {
      const came = {
        bytes,
        width_px: widthPx,
        height_px: heightPx,
        hire_id: hireId,
        taken_at: takenAt === null ? null : toInstantText(takenAt, "takenAt"),
        received_at: door.now(),
      };
      const rest = { held_from: null, removed_at: null, removed_under: null, bytes_gone_at: null };
      await door
        .insert("photograph", { sha256, ...came, ...rest })
        .onConflict((on) =>
          on
            .columns(["firm_id", "depot_id", "sha256"])
            .doUpdateSet(came)
            .where("photograph.bytes", "=", 0)
            .where("photograph.removed_at", "is", null),
        )
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
    async isPaper(sha256) {
      const row = await door
        .from("settlement_entry")
        .select("id")
        .where("kind", "in", PAPER_ENTRIES)
        .where("document", "like", `%"${sha256}"%`)
        .limit(1)
        .executeTakeFirst();
      return row !== undefined;
    },
    async removed({ withBytes } = { withBytes: false }) {
      let query = door.from("photograph").select("sha256").where("removed_at", "is not", null);
      if (withBytes) query = query.where("bytes_gone_at", "is", null);
      return (await query.orderBy("sha256").execute()).map(({ sha256 }) => sha256);
    },
    async bytesGone(sha256) {
      await door.change("photograph", { bytes_gone_at: door.now() }).where("sha256", "=", sha256).execute();
    },
    letGo: (endedUntil) => door.within((inner) => letGo(inner, toInstantText(endedUntil, "endedUntil"))),
  };
}
