import { uuidv7 } from "uuidv7";
import { fromText, toInstantText, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { UseReturnTable } from "./tables.ts";
import type { Store, UseReturnRow } from "./types.ts";

/** What an erased hire leaves of what was written about it. */
const EMPTIED = "{}";

const read = (row: UseReturnTable): UseReturnRow => ({
  id: row.id,
  vehicleId: row.vehicle_id,
  hireId: row.hire_id,
  returnedAt: row.returned_at,
  document: fromText(row.document),
  outcome: row.outcome === null ? null : fromText(row.outcome),
});

/** Use of hires that are over, and the rates of vehicles that were learnt from it. */
export function usesStore(door: Door): Store["uses"] {
  return {
    put: ({ vehicleId, hireId, returnedAt, document }) =>
      door.within(async (inner) => {
        const row = {
          vehicle_id: vehicleId,
          returned_at: toInstantText(returnedAt, "returnedAt"),
          document: toText(document),
          outcome: null,
          engine: null,
        };
        const before =
          hireId === null
            ? undefined
            : await inner.from("use_return").select("id").where("hire_id", "=", hireId).executeTakeFirst();
        if (before !== undefined) {
          await inner.change("use_return", row).where("id", "=", before.id).execute();
          return { id: before.id };
        }
        const id = uuidv7();
        await inner.insert("use_return", { ...row, id, hire_id: hireId }).execute();
        return { id };
      }),
    async ofHire(hireId) {
      const row = await door.from("use_return").selectAll().where("hire_id", "=", hireId).executeTakeFirst();
      return row === undefined ? null : read(row);
    },
    async outcomes(engine) {
      const rows = await door
        .from("use_return")
        .select(["id", "vehicle_id", "hire_id", "returned_at", "outcome"])
        // what was emptied cannot be compared anew: it keeps what an earlier engine found
        .where((where) =>
          where.or([
            where("engine", "=", engine),
            where.and([where("document", "=", EMPTIED), where("outcome", "is not", null)]),
          ]),
        )
        .orderBy("returned_at")
        .orderBy("id")
        .execute();
      return rows.map((row) => ({
        id: row.id,
        vehicleId: row.vehicle_id,
        hireId: row.hire_id,
        returnedAt: row.returned_at,
        outcome: row.outcome === null ? null : fromText(row.outcome),
      }));
    },
    async waiting(engine, limit) {
      const rows = await door
        .from("use_return")
        .selectAll()
        .where("document", "!=", EMPTIED)
        .where((where) => where.or([where("engine", "is", null), where("engine", "!=", engine)]))
        .orderBy("returned_at")
        .orderBy("id")
        .limit(limit)
        .execute();
      return rows.map(read);
    },
    async setOutcome(id, outcome, engine) {
      await door
        .change("use_return", { outcome: toText(outcome), engine })
        .where("id", "=", id)
        .execute();
    },
    async rates() {
      const rows = await door.from("use_rate").selectAll().orderBy("vehicle_id").execute();
      return rows.map((row) => ({
        vehicleId: row.vehicle_id,
        document: fromText(row.document),
        at: row.at,
      }));
    },
    putRates: (rates) =>
      door.within(async (inner) => {
        await inner.remove("use_rate").execute();
        for (const { vehicleId, document } of rates)
          await inner
            .insert("use_rate", { vehicle_id: vehicleId, document: toText(document), at: door.now() })
            .execute();
      }),
  };
}
