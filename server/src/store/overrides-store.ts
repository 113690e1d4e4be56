import { uuidv7 } from "uuidv7";
import type { Door } from "./door.ts";
import type { OverrideTable } from "./tables.ts";
import type { OverrideRow, Store } from "./types.ts";

const read = (row: OverrideTable): OverrideRow => ({
  id: row.id,
  hireId: row.hire_id,
  findingCode: row.finding_code,
  about: row.about,
  basis: row.basis as OverrideRow["basis"], // written from an OverrideRow only
  reason: row.reason,
  by: row.by_id,
  at: row.at,
});

/** Who let a finding pass, and why; kept for ever. */
export function overridesStore(door: Door): Store["overrides"] {
  const ofHires: Store["overrides"]["ofHires"] = async (hireIds) => {
    if (hireIds.length === 0) return [];
    const rows = await door
      .from("finding_override")
      .selectAll()
      .where("hire_id", "in", [...hireIds])
      .orderBy("id")
      .execute();
    return rows.map(read);
  };
  return {
    async add({ hireId, findingCode, about, basis, reason, by }) {
      const row = {
        id: uuidv7(),
        hire_id: hireId,
        finding_code: findingCode,
        about,
        basis,
        reason,
        by_id: by,
        at: door.now(),
      };
      await door.insert("finding_override", row).execute();
      return { id: row.id, hireId, findingCode, about, basis, reason, by, at: row.at };
    },
    ofHires,
    ofHire: (hireId) => ofHires([hireId]),
  };
}
