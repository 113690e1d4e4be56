import { uuidv7 } from "uuidv7";
import { fromText, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { RuleChangeTable } from "./tables.ts";
import type { RuleChangeRow, Store } from "./types.ts";

const read = (row: Omit<RuleChangeTable, "firm_id" | "depot_id">): RuleChangeRow => ({
  id: row.id,
  ruleId: row.rule_id,
  kind: row.kind as RuleChangeRow["kind"], // written from a RuleChangeRow only
  document: fromText(row.document),
  by: row.by_id,
  at: row.at,
});

/** A depot's own versions of the dated rules, and which it read again. */
export function rulesStore(door: Door): Store["rules"] {
  return {
    async add({ ruleId, kind, document, by }) {
      const row = {
        id: uuidv7(),
        rule_id: ruleId,
        kind,
        document: toText(document),
        by_id: by,
        at: door.now(),
      };
      await door.insert("rule_change", row).execute();
      return read(row);
    },
    async all() {
      const rows = await door.from("rule_change").selectAll().orderBy("id").execute();
      return rows.map(read);
    },
  };
}
