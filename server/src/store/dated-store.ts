import { hashJson } from "@setfair/records";
import { uuidv7 } from "uuidv7";
import { fromText, toDateText, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { VersionTable } from "./tables.ts";
import type { DatedStore, DatedVersion } from "./types.ts";

const read = (row: VersionTable): DatedVersion => ({
  versionId: row.id,
  of: row.of_id,
  validFrom: row.valid_from,
  document: fromText(row.document),
  hash: row.hash,
  createdAt: row.created_at,
});

/** Descriptions and terms, each version under the civil date from which it holds. */
export function datedStore(door: Door, table: "vehicle_version" | "terms_version"): DatedStore {
  const rows = (through: Door) => through.from(table).selectAll();
  return {
    put: ({ of, validFrom, document }) =>
      door.within(async (inner) => {
        const from = toDateText(validFrom, "validFrom");
        const seq = await inner.lock(`${table}:${of}`);
        const last = await rows(inner)
          .where("of_id", "=", of)
          .where("valid_from", "=", from)
          .orderBy("seq", "desc")
          .executeTakeFirst();
        const hash = hashJson(document);
        if (last?.hash === hash) return read(last);
        const row = {
          id: uuidv7(),
          of_id: of,
          valid_from: from,
          seq,
          document: toText(document),
          hash,
          created_at: inner.now(),
        };
        await inner.insert(table, row).execute();
        return read({ ...row, firm_id: inner.scope.firmId, depot_id: inner.scope.depotId });
      }),
    async on(of, date) {
      const row = await rows(door)
        .where("of_id", "=", of)
        .where("valid_from", "<=", toDateText(date, "date"))
        .orderBy("valid_from", "desc")
        .orderBy("seq", "desc")
        .limit(1)
        .executeTakeFirst();
      return row === undefined ? null : read(row);
    },
    async newest(of) {
      const row = await rows(door).where("of_id", "=", of).orderBy("seq", "desc").limit(1).executeTakeFirst();
      return row === undefined ? null : read(row);
    },
    async hold(of) {
      await door.lock(`${table}:${of}`);
    },
    async byId(versionId) {
      const row = await rows(door).where("id", "=", versionId).executeTakeFirst();
      return row === undefined ? null : read(row);
    },
    async versions(of) {
      const found = await rows(door).where("of_id", "=", of).orderBy("valid_from").orderBy("seq").execute();
      return found.map(read);
    },
    async versionsOf(of) {
      if (of.length === 0) return [];
      const found = await rows(door)
        .where("of_id", "in", [...of])
        .orderBy("of_id")
        .orderBy("valid_from")
        .orderBy("seq")
        .execute();
      return found.map(read);
    },
    async allOn(date) {
      const found = await rows(door)
        .where("valid_from", "<=", toDateText(date, "date"))
        .orderBy("of_id")
        .orderBy("valid_from")
        .orderBy("seq")
        .execute();
      return [...new Map(found.map((row) => [row.of_id, row])).values()].map(read);
    },
  };
}
