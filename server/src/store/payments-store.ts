import { BadInput } from "@setfair/engine";
import { uuidv7 } from "uuidv7";
import { fromText, toDateText, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { PaymentTable } from "./tables.ts";
import type { PaymentRow, Store } from "./types.ts";

const read = (row: PaymentTable): PaymentRow => ({
  id: row.id,
  hireId: row.hire_id,
  kind: row.kind as PaymentRow["kind"], // written from a PaymentRow only
  currency: row.currency,
  pence: row.pence,
  on: row.on_day ?? row.at.slice(0, 10),
  of: row.of_id,
  document: fromText(row.document),
  by: row.by_id,
  at: row.at,
});

/** What was paid, held, released and paid back; never changed. */
export function paymentsStore(door: Door): Store["payments"] {
  const ofHires: Store["payments"]["ofHires"] = async (hireIds) => {
    if (hireIds.length === 0) return [];
    const rows = await door
      .from("payment")
      .selectAll()
      .where("hire_id", "in", [...hireIds])
      .orderBy("at")
      .orderBy("id")
      .execute();
    return rows.map(read);
  };
  return {
    async add({ id = uuidv7(), hireId, kind, currency, pence, document, by, of = null }) {
      if (!Number.isSafeInteger(pence) || pence < 0) {
        throw new BadInput([{ path: "pence", expected: "whole pence, 0 or more" }]);
      }
      await door
        .insert("payment", {
          id,
          hire_id: hireId,
          kind,
          currency,
          pence,
          document: toText(document),
          by_id: by,
          at: door.now(),
          on_day: typeof document.on === "string" ? toDateText(document.on, "on") : door.now().slice(0, 10),
          of_id: of,
        })
        .onConflict((on) => on.columns(["firm_id", "depot_id", "id"]).doNothing())
        .execute();
      const row = read(await door.from("payment").selectAll().where("id", "=", id).executeTakeFirstOrThrow());
      if (row.hireId !== hireId || row.kind !== kind || row.pence !== pence || row.currency !== currency) {
        throw new BadInput([{ path: "id", expected: "an id that no other payment has" }]);
      }
      return row;
    },
    async lock(hireId) {
      await door.lock(`ledger:${hireId}`);
    },
    async between(from, to) {
      const rows = await door
        .from("payment")
        .selectAll()
        .where("on_day", ">=", toDateText(from, "from"))
        .where("on_day", "<=", toDateText(to, "to"))
        .orderBy("on_day")
        .orderBy("at")
        .orderBy("id")
        .execute();
      return rows.map(read);
    },
    ofHires,
    ofHire: (hireId) => ofHires([hireId]),
  };
}
