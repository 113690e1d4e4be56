import { BadInput } from "@setfair/engine";
import { uuidv7 } from "uuidv7";
import { fromText, toDateText, toInstantText, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { StockEventTable, StockHoldTable, StockItemTable } from "./tables.ts";
import type { StockEventRow, StockHoldRow, StockItemRow, Store } from "./types.ts";

const readItem = (row: StockItemTable): StockItemRow => ({
  id: row.id,
  kind: row.kind,
  name: row.name,
  size: row.size,
  count: row.count,
  expiresOn: row.expires_on,
  retiredOn: row.retired_on,
  document: fromText(row.document),
  version: row.version,
});
const readHold = (row: StockHoldTable): StockHoldRow => ({
  id: row.id,
  itemId: row.item_id,
  hireId: row.hire_id,
  count: row.count,
  from: row.from_at,
  to: row.to_at,
  packedAt: row.packed_at,
});
const readEvent = (row: StockEventTable): StockEventRow => ({
  id: row.id,
  itemId: row.item_id,
  act: row.act,
  document: fromText(row.document),
  by: row.by_id,
  at: row.at,
});
type Fields = Omit<StockItemRow, "id" | "version">;

function columnsOf(item: Fields) {
  if (!Number.isInteger(item.count) || item.count < 1)
    throw new BadInput([{ path: "count", expected: "a whole number from 1" }]);
  const date = (value: string | null, path: string) => (value === null ? null : toDateText(value, path));
  return {
    kind: item.kind,
    name: item.name,
    size: item.size,
    count: item.count,
    expires_on: date(item.expiresOn, "expiresOn"),
    retired_on: date(item.retiredOn, "retiredOn"),
    document: toText(item.document),
  };
}

/** Puts what a hire holds in place of what it held; what stays on the same thing stays packed. */
async function replaceHolds(
  door: Door,
  hireId: string,
  period: { readonly from: string; readonly to: string },
  seats: readonly { readonly itemId: string; readonly count: number }[],
): Promise<void> {
  const from = toInstantText(period.from, "from");
  const to = toInstantText(period.to, "to");
  if (from >= to) throw new BadInput([{ path: "to", expected: "an instant after from" }]);
  const before = await door.from("stock_hold").selectAll().where("hire_id", "=", hireId).execute();
  await door.remove("stock_hold").where("hire_id", "=", hireId).execute();
  const counts = new Map<string, number>();
  for (const { itemId, count } of seats) counts.set(itemId, (counts.get(itemId) ?? 0) + count);
  for (const [itemId, count] of counts) {
    const was = before.find((row) => row.item_id === itemId && row.count === count);
    const row = {
      id: was?.id ?? uuidv7(),
      item_id: itemId,
      hire_id: hireId,
      count,
      from_at: from,
      to_at: to,
      packed_at: was?.packed_at ?? null,
    };
    await door.insert("stock_hold", row).execute();
  }
}

/** What travels with hires. Ask what is free after `lock`, within the transaction that takes it. */
export function stockStore(door: Door): Store["stock"] {
  return {
    async lock() {
      await door.lock("stock");
    },
    async items() {
      const rows = await door
        .from("stock_item")
        .selectAll()
        .orderBy("kind")
        .orderBy("name")
        .orderBy("id")
        .execute();
      return rows.map(readItem);
    },
    async addItem(item) {
      const row = { id: uuidv7(), version: 1, ...columnsOf(item) };
      await door.insert("stock_item", row).execute();
      return readItem({ ...row, firm_id: door.scope.firmId, depot_id: door.scope.depotId });
    },
    async changeItem(id, item, version) {
      const { numUpdatedRows } = await door
        .change("stock_item", { ...columnsOf(item), version: version + 1 })
        .where("id", "=", id)
        .where("version", "=", version)
        .executeTakeFirst();
      return numUpdatedRows === 1n;
    },
    async holdsBetween(from, to) {
      const rows = await door
        .from("stock_hold")
        .selectAll()
        .where("from_at", "<", toInstantText(to, "to"))
        .where("to_at", ">", toInstantText(from, "from"))
        .orderBy("from_at")
        .orderBy("id")
        .execute();
      return rows.map(readHold);
    },
    async holdsOf(hireIds) {
      if (hireIds.length === 0) return [];
      const rows = await door
        .from("stock_hold")
        .selectAll()
        .where("hire_id", "in", [...hireIds])
        .orderBy("id")
        .execute();
      return rows.map(readHold);
    },
    replaceHolds: (hireId, period, seats) =>
      door.within((inner) => replaceHolds(inner, hireId, period, seats)),
    async moveHold({ hireId, from, to }) {
      const { numUpdatedRows } = await door
        .change("stock_hold", { item_id: to })
        .where("hire_id", "=", hireId)
        .where("item_id", "=", from)
        .where("packed_at", "is", null)
        .executeTakeFirst();
      return numUpdatedRows === 1n;
    },
    async setPacked(holdId, isPacked) {
      const { numUpdatedRows } = await door
        .change("stock_hold", { packed_at: isPacked ? door.now() : null })
        .where("id", "=", holdId)
        .executeTakeFirst();
      return numUpdatedRows === 1n;
    },
    async endHold(holdId) {
      const { numUpdatedRows } = await door
        .change("stock_hold", { to_at: door.now() })
        .where("id", "=", holdId)
        .where("from_at", "<", door.now())
        .executeTakeFirst();
      return numUpdatedRows === 1n;
    },
    async release(hireId) {
      await door.remove("stock_hold").where("hire_id", "=", hireId).execute();
    },
    async addEvent({ itemId, act, document, by }) {
      const row = {
        id: uuidv7(),
        item_id: itemId,
        act,
        document: toText(document),
        by_id: by,
        at: door.now(),
      };
      await door.insert("stock_event", row).execute();
    },
    async events(itemId) {
      const rows = await door
        .from("stock_event")
        .selectAll()
        .where("item_id", "=", itemId)
        .orderBy("id")
        .execute();
      return rows.map(readEvent);
    },
  };
}
