import { uuidv7 } from "uuidv7";
import { fromText, toDateText, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { InvoiceTable } from "./tables.ts";
import type { InvoiceRow, Store } from "./types.ts";

const read = (row: InvoiceTable): InvoiceRow => ({
  id: row.id,
  hireId: row.hire_id,
  series: row.series as InvoiceRow["series"], // written from an InvoiceRow only
  number: Number(row.number),
  on: row.on_day,
  of: row.of_id,
  document: fromText(row.document),
  by: row.by_id,
  at: row.at,
});

async function issue(door: Door, invoice: Parameters<Store["invoices"]["issue"]>[0]): Promise<InvoiceRow> {
  const row = {
    id: uuidv7(),
    hire_id: invoice.hireId,
    series: invoice.series,
    number: await door.countForFirm(`invoice:${invoice.series}`),
    on_day: toDateText(invoice.on, "on"),
    of_id: invoice.of ?? null,
    document: toText(invoice.document),
    by_id: invoice.by,
    at: door.now(),
  };
  await door.insert("invoice", row).execute();
  return read({ ...row, firm_id: door.scope.firmId, depot_id: door.scope.depotId });
}

/** Invoices and credit notes; never changed. The number is taken in the transaction that writes it: what is rolled back leaves no hole. */
export function invoicesStore(door: Door): Store["invoices"] {
  return {
    issue: (invoice) => door.within((inner) => issue(inner, invoice)),
    async get(id) {
      const row = await door.from("invoice").selectAll().where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : read(row);
    },
    async ofHires(hireIds) {
      if (hireIds.length === 0) return [];
      const rows = await door
        .from("invoice")
        .selectAll()
        .where("hire_id", "in", [...hireIds])
        .orderBy("at")
        .orderBy("id")
        .execute();
      return rows.map(read);
    },
    async between(from, to) {
      const rows = await door
        .from("invoice")
        .selectAll()
        .where("on_day", ">=", toDateText(from, "from"))
        .where("on_day", "<=", toDateText(to, "to"))
        .orderBy("on_day")
        .orderBy("number")
        .execute();
      return rows.map(read);
    },
  };
}
