import type { Kysely } from "kysely";
import { uuidv7 } from "uuidv7";
import { fromText, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import type {
  FeedAnswer,
  FeedRow,
  FeedsStore,
  VehicleDraftRow,
  VehicleDraftsStore,
} from "./message-types.ts";
import type { CalendarFeedTable, Tables, VehicleDraftTable } from "./tables.ts";

const read = (row: CalendarFeedTable): FeedRow => ({
  id: row.id,
  kind: row.kind as FeedRow["kind"], // written from a FeedRow only
  about: row.about,
  withNames: row.with_names === 1,
  by: row.by_id,
  at: row.at,
  revokedAt: row.revoked_at,
});

/** Secret links to calendars, and which events of calendar files came in. */
export function feedsStore(door: Door): FeedsStore {
  return {
    async create({ kind, about, withNames, by, tokenHash }) {
      const row = {
        id: uuidv7(),
        token_hash: tokenHash,
        kind,
        about,
        with_names: withNames ? 1 : 0,
        by_id: by,
        at: door.now(),
        revoked_at: null,
      };
      await door.insert("calendar_feed", row).execute();
      return read({ ...row, firm_id: door.scope.firmId, depot_id: door.scope.depotId });
    },
    async list() {
      return (await door.from("calendar_feed").selectAll().orderBy("id", "desc").execute()).map(read);
    },
    async revoke(id) {
      const { numUpdatedRows } = await door
        .change("calendar_feed", { revoked_at: door.now() })
        .where("id", "=", id)
        .where("revoked_at", "is", null)
        .executeTakeFirst();
      return numUpdatedRows === 1n;
    },
    async knownEvents(vehicleId) {
      const rows = await door
        .from("calendar_event")
        .select("uid")
        .where("vehicle_id", "=", vehicleId)
        // a block that was taken away may come in again
        .where("block_id", "in", door.from("vehicle_block").select("id"))
        .execute();
      return new Set(rows.map(({ uid }) => uid));
    },
    async rememberEvent({ vehicleId, uid, blockId }) {
      await door
        .insert("calendar_event", { vehicle_id: vehicleId, uid, block_id: blockId, at: door.now() })
        .onConflict((on) =>
          on.columns(["firm_id", "depot_id", "vehicle_id", "uid"]).doUpdateSet({ block_id: blockId }),
        )
        .execute();
    },
  };
}

/** Which calendar a link opens; null where it is unknown or revoked. */
export async function findFeed(db: Kysely<Tables>, tokenHash: string): Promise<FeedAnswer | null> {
  const row = await db
    .selectFrom("calendar_feed")
    .selectAll()
    .where("token_hash", "=", tokenHash)
    .where("revoked_at", "is", null)
    .executeTakeFirst();
  return row === undefined
    ? null
    : { scope: { firmId: row.firm_id, depotId: row.depot_id }, feed: read(row) };
}

const readDraft = (row: VehicleDraftTable): VehicleDraftRow => ({
  id: row.id,
  registration: row.registration,
  document: fromText(row.document),
  by: row.by_id,
  at: row.at,
});

/** Vehicles that came in as a list and are not described yet. */
export function vehicleDraftsStore(door: Door): VehicleDraftsStore {
  return {
    async add({ registration, document, by }) {
      const row = { id: uuidv7(), registration, document: toText(document), by_id: by, at: door.now() };
      await door.insert("vehicle_draft", row).execute();
      return readDraft({ ...row, firm_id: door.scope.firmId, depot_id: door.scope.depotId });
    },
    async list() {
      return (await door.from("vehicle_draft").selectAll().orderBy("id").execute()).map(readDraft);
    },
    async remove(id) {
      const { numDeletedRows } = await door.remove("vehicle_draft").where("id", "=", id).executeTakeFirst();
      return numDeletedRows === 1n;
    },
  };
}
