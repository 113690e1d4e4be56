import { uuidv7 } from "uuidv7";
import { fromText, toDateText, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { DefectTable, UpkeepEntryTable } from "./tables.ts";
import type { DefectRow, DisclosureRow, Store, UpkeepRow } from "./types.ts";

const readEntry = (row: UpkeepEntryTable): UpkeepRow => ({
  id: row.id,
  vehicleId: row.vehicle_id,
  kind: row.kind as UpkeepRow["kind"], // written from an UpkeepRow only
  on: row.on_day,
  document: fromText(row.document),
  by: row.by_id,
  at: row.at,
});

/** What was done to a vehicle and read off it, oldest first; of one day the later written is the later. Never changed. */
export function upkeepStore(door: Door): Store["upkeep"] {
  return {
    async add({ vehicleId, kind, on, document, by }) {
      const row = {
        id: uuidv7(),
        vehicle_id: vehicleId,
        kind,
        on_day: toDateText(on, "on"),
        document: toText(document),
        by_id: by,
        at: door.now(),
      };
      await door.insert("upkeep_entry", row).execute();
      return readEntry({ ...row, firm_id: door.scope.firmId, depot_id: door.scope.depotId });
    },
    async ofVehicles(vehicleIds) {
      if (vehicleIds.length === 0) return [];
      const rows = await door
        .from("upkeep_entry")
        .selectAll()
        .where("vehicle_id", "in", [...vehicleIds])
        .orderBy("on_day")
        .orderBy("id")
        .execute();
      return rows.map(readEntry);
    },
  };
}

const readDefect = (row: DefectTable): DefectRow => ({
  id: row.id,
  vehicleId: row.vehicle_id,
  hireId: row.hire_id,
  class: row.class as DefectRow["class"], // written from a DefectRow only
  document: fromText(row.document),
  by: row.by_id,
  at: row.at,
  closed:
    row.closed_at === null ? null : { at: row.closed_at, by: row.closed_by ?? "", how: row.closed_how ?? "" },
});

/** Defects of vehicles, and which hirer was told of which. */
export function defectsStore(door: Door): Store["defects"] {
  return {
    async add({ vehicleId, hireId, class: kind, document, by }) {
      const row = {
        id: uuidv7(),
        vehicle_id: vehicleId,
        hire_id: hireId,
        class: kind,
        document: toText(document),
        by_id: by,
        at: door.now(),
        closed_at: null,
        closed_by: null,
        closed_how: null,
      };
      await door.insert("defect", row).execute();
      return readDefect({ ...row, firm_id: door.scope.firmId, depot_id: door.scope.depotId });
    },
    async get(id) {
      const row = await door.from("defect").selectAll().where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : readDefect(row);
    },
    async ofVehicles(vehicleIds) {
      if (vehicleIds.length === 0) return [];
      const rows = await door
        .from("defect")
        .selectAll()
        .where("vehicle_id", "in", [...vehicleIds])
        .orderBy("id")
        .execute();
      return rows.map(readDefect);
    },
    async close(id, { by, how }) {
      const { numUpdatedRows } = await door
        .change("defect", { closed_at: door.now(), closed_by: by, closed_how: how })
        .where("id", "=", id)
        .where("closed_at", "is", null)
        .executeTakeFirst();
      return numUpdatedRows === 1n;
    },
    async disclose({ defectId, hireId, signer, by }) {
      const row = { id: uuidv7(), defect_id: defectId, hire_id: hireId, signer, by_id: by, at: door.now() };
      await door.insert("defect_disclosure", row).execute();
      return { id: row.id, defectId, hireId, signer, by, at: row.at };
    },
    async disclosures(hireIds) {
      if (hireIds.length === 0) return [];
      const rows = await door
        .from("defect_disclosure")
        .selectAll()
        .where("hire_id", "in", [...hireIds])
        .orderBy("id")
        .execute();
      return rows.map(
        (row): DisclosureRow => ({
          id: row.id,
          defectId: row.defect_id,
          hireId: row.hire_id,
          signer: row.signer,
          by: row.by_id,
          at: row.at,
        }),
      );
    },
  };
}
