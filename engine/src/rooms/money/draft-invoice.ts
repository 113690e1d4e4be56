import { gbp } from "../../base/money.ts";
import { sumGross } from "./invoice-lines.ts";
import type { InvoiceDraft, InvoiceLine, VatPart } from "./types.ts";

const sum = (lines: readonly InvoiceLine[], what: "netPence" | "vatPence" | "grossPence"): number =>
  lines.reduce((total, line) => total + line[what], 0);

/** What was invoiced under each key so far, credit notes taken off. */
function invoicedBefore(lines: readonly InvoiceLine[]): ReadonlyMap<string, readonly InvoiceLine[]> {
  const byKey = new Map<string, InvoiceLine[]>();
  for (const line of lines) byKey.set(line.key, [...(byKey.get(line.key) ?? []), line]);
  return byKey;
}

/** The amount of a line that is still to be invoiced, by one rate of VAT. */
function rest(line: InvoiceLine, before: readonly InvoiceLine[]): InvoiceLine {
  const same = before.filter(({ vat, ratePercent }) => vat === line.vat && ratePercent === line.ratePercent);
  return {
    ...line,
    netPence: line.netPence - sum(same, "netPence"),
    vatPence: line.vatPence - sum(same, "vatPence"),
    grossPence: line.grossPence - sum(same, "grossPence"),
  };
}

/** What was invoiced and is charged no more, or no more at that rate, taken back. */
function takenBack(charged: readonly InvoiceLine[], before: ReadonlyMap<string, readonly InvoiceLine[]>) {
  const stands = new Set(charged.map(({ key, vat, ratePercent }) => `${key} ${vat} ${ratePercent}`));
  const gone = [...before.values()]
    .flat()
    .filter(({ key, vat, ratePercent }) => !stands.has(`${key} ${vat} ${ratePercent}`));
  const byRate = new Map<string, InvoiceLine>();
  for (const line of gone) {
    const id = `${line.key} ${line.vat} ${line.ratePercent}`;
    const empty = { ...line, netPence: 0, vatPence: 0, grossPence: 0 };
    byRate.set(id, subtract(byRate.get(id) ?? empty, line));
  }
  return [...byRate.values()];
}

const subtract = (from: InvoiceLine, line: InvoiceLine): InvoiceLine => ({
  ...from,
  netPence: from.netPence - line.netPence,
  vatPence: from.vatPence - line.vatPence,
  grossPence: from.grossPence - line.grossPence,
});

/** Net, VAT and gross by kind and rate. The VAT of an invoice is the sum of its lines' VAT, so that the parts always come to the whole. */
function partsOf(lines: readonly InvoiceLine[]): VatPart[] {
  const keys = [...new Set(lines.map(({ vat, ratePercent }) => `${vat} ${ratePercent}`))].sort();
  return keys.map((key) => {
    const some = lines.filter(({ vat, ratePercent }) => `${vat} ${ratePercent}` === key);
    const { vat: kind, ratePercent } = some[0]!;
    return {
      kind,
      ratePercent,
      net: gbp(sum(some, "netPence")),
      vat: gbp(sum(some, "vatPence")),
      gross: gbp(sum(some, "grossPence")),
    };
  });
}

/** Totals of the lines of an invoice or, where they come to less than nothing, of a credit note. */
export function totalLines(lines: readonly InvoiceLine[]): InvoiceDraft {
  return {
    kind: sumGross(lines) < 0 ? "creditNote" : "invoice",
    lines,
    parts: partsOf(lines),
    net: gbp(sum(lines, "netPence")),
    vat: gbp(sum(lines, "vatPence")),
    total: gbp(sum(lines, "grossPence")),
  };
}

/**
 * What is still to be invoiced: every line that is charged, less what stands on earlier invoices under its key.
 * Null where nothing is.
 */
export function draftInvoice(
  charged: readonly InvoiceLine[],
  invoiced: readonly InvoiceLine[],
): InvoiceDraft | null {
  const before = invoicedBefore(invoiced);
  const lines = [
    ...charged.map((line) => rest(line, before.get(line.key) ?? [])),
    ...takenBack(charged, before),
  ].filter(({ netPence, vatPence, grossPence }) => netPence !== 0 || vatPence !== 0 || grossPence !== 0);
  return lines.length === 0 ? null : totalLines(lines);
}

/** The whole of an invoice taken back: its lines are then to be invoiced again. */
export function creditWhole(lines: readonly InvoiceLine[]): InvoiceDraft {
  return totalLines(
    lines.map((line) => subtract({ ...line, netPence: 0, vatPence: 0, grossPence: 0 }, line)),
  );
}
