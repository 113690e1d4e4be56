import { decimalText, type Posting, postEntries, postInvoice } from "@setfair/engine";
import type { Words } from "@setfair/words";
import { stringify } from "csv-stringify/sync";
import type { HireRow, InvoiceRow, PaymentRow, Store } from "../store/types.ts";
import { entriesOf } from "./hire-money.ts";
import { invoiceDocument, numberText } from "./invoices.ts";

const COLUMNS = [
  "date",
  "account",
  "accountName",
  "debit",
  "credit",
  "currency",
  "what",
  "document",
  "hire",
  "customer",
  "vatKind",
  "vatRatePercent",
  "note",
  "enteredAt",
  "entryId",
] as const;
type Row = Readonly<Record<(typeof COLUMNS)[number], string>>;

interface Around {
  readonly hire: HireRow | undefined;
  readonly words: Words;
}

function rowOf({ account, on, of, pence }: Posting, { hire, words }: Around): Row {
  return {
    date: on,
    account,
    accountName: words.t(`account.${account}`),
    debit: pence > 0 ? decimalText(pence, "GBP") : "",
    credit: pence < 0 ? decimalText(-pence, "GBP") : "",
    currency: "GBP",
    what: "",
    document: "",
    hire: hire?.number ?? "",
    customer: hire?.customerName ?? "",
    vatKind: "",
    vatRatePercent: "",
    note: "",
    enteredAt: "",
    entryId: of,
  };
}

/** Entries of the span; the whole ledger of their hires is read, since what undoes or pays back rests on earlier days. */
async function entryRows(store: Store, paid: readonly PaymentRow[], around: (hireId: string) => Around) {
  const all = await store.payments.ofHires([...new Set(paid.map(({ hireId }) => hireId))]);
  return paid.flatMap((row) => {
    const context = around(row.hireId);
    const ledger = entriesOf(all.filter(({ hireId }) => hireId === row.hireId));
    const note = typeof row.document.note === "string" ? row.document.note : "";
    return postEntries(ledger)
      .filter(({ of }) => of === row.id)
      .map((posting) => ({
        ...rowOf(posting, context),
        what: context.words.t(`payment.${row.kind}`),
        note,
        enteredAt: row.at,
      }));
  });
}

function invoiceRows(invoices: readonly InvoiceRow[], around: (hireId: string) => Around): Row[] {
  return invoices.flatMap((row) => {
    const context = around(row.hireId);
    return invoiceDocument(row).lines.flatMap((line) =>
      postInvoice(row.id, row.on, [line]).map((posting) => ({
        ...rowOf(posting, context),
        what: context.words.t(`lineKind.${line.line}`),
        document: numberText(row),
        vatKind: line.vat,
        vatRatePercent: String(line.ratePercent),
        note: typeof line.facts.note === "string" ? line.facts.note : "",
        enteredAt: row.at,
      })),
    );
  });
}

/**
 * Double-entry postings of a span of days as CSV with a head, one row each: debits and credits of every entry and
 * invoice sum to the same. A cell that a spreadsheet would take for a formula is written so that it stays text.
 */
export async function exportPostings(store: Store, from: string, to: string, words: Words): Promise<string> {
  const paid = await store.payments.between(from, to);
  const invoices = await store.invoices.between(from, to);
  const hires = new Map<string, HireRow>();
  for (const id of new Set([...paid, ...invoices].map(({ hireId }) => hireId))) {
    const hire = await store.hires.get(id);
    if (hire !== null) hires.set(id, hire);
  }
  const around = (hireId: string): Around => ({ hire: hires.get(hireId), words });
  const rows = [...(await entryRows(store, paid, around)), ...invoiceRows(invoices, around)].sort((a, b) =>
    a.date < b.date ? -1 : a.date > b.date ? 1 : 0,
  );
  return stringify(rows, {
    header: true,
    columns: [...COLUMNS],
    escape_formulas: true,
    record_delimiter: "windows",
    bom: true,
  });
}
