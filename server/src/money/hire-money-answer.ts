import { gbp, undoes } from "@setfair/engine";
import type { z } from "zod";
import type { hireMoneySchema, paymentSchema } from "../api/schemas/money.ts";
import { asDocument } from "../desk/documents.ts";
import { type HireData, partOf, readHireData } from "../desk/hire-data.ts";
import { accountNames } from "../desk/names.ts";
import type { InvoiceRow, Store } from "../store/types.ts";
import { type HireMoney, readHireMoney } from "./hire-money.ts";
import { disputedNow, invoiceDocument, numberText, toInvoice } from "./invoices.ts";

type Answer = z.input<typeof hireMoneySchema>;
type NameOf = (id: string) => string;

/** The entries of a hire as the screens take them. */
export function paymentsAnswer(data: HireData, nameOf: NameOf): z.input<typeof paymentSchema>[] {
  const { undone } = readHireMoney(data).ledger;
  return data.payments.map(({ id, kind, pence, on, of, document, by, at }) => {
    const { method, note } = asDocument<{ method?: string; note?: string }>(document);
    return {
      id,
      kind,
      amount: gbp(pence),
      on,
      of,
      undoneBy: undone[id] ?? null,
      method: method ?? "-",
      note: note ?? null,
      by: nameOf(by),
      at,
    };
  });
}

function invoicesAnswer(invoices: readonly InvoiceRow[], nameOf: NameOf): Answer["invoices"] {
  return invoices.map((row) => {
    const { total, vat, reason, ofNumber } = invoiceDocument(row);
    const creditedBy = invoices.find(({ of }) => of === row.id);
    return {
      id: row.id,
      number: numberText(row),
      kind: row.series,
      on: row.on,
      total,
      vat,
      of: ofNumber,
      creditedBy: creditedBy === undefined ? null : numberText(creditedBy),
      reason,
      by: nameOf(row.by),
    };
  });
}

/** Entries that stand and that nothing rests on. */
function undoable(data: HireData, { ledger }: HireMoney): Answer["undoable"] {
  const used = new Set([
    ...ledger.income.filter(({ refunded }) => refunded > 0).map(({ id }) => id),
    ...ledger.holdings.filter(({ remaining, pence }) => remaining < pence).map(({ id }) => id),
  ]);
  const moves = ["payment", "refund", "depositHeld", "depositReleased"];
  return data.payments
    .filter((row) => !undoes(row) && ledger.undone[row.id] === undefined && !used.has(row.id))
    .map(({ id, kind }) => ({ id, failed: moves.includes(kind) }));
}

export const holdAnswer = ({ pence, ...hold }: HireMoney["holds"][number]) => ({
  ...hold,
  amount: gbp(pence),
});

/** The money of a hire as one answer. */
export async function hireMoneyAnswer(store: Store, id: string, now: Date): Promise<Answer> {
  const data = await readHireData(store, id, now);
  const money = readHireMoney(data);
  const nameOf = await accountNames(store);
  const invoices = await store.invoices.ofHires([id]);
  const draft = toInvoice(data, invoices);
  return {
    price: gbp(money.pricePence),
    due: gbp(money.duePence),
    disputed: gbp(money.disputedPence),
    settled: gbp(money.settledPence),
    owed: gbp(money.owedPence),
    depositDue: gbp(money.depositDuePence),
    depositHeld: gbp(money.depositHeldPence),
    instalments: money.instalments.map(({ what, dueOn, pence, open, overdueDays }) => ({
      what,
      dueOn,
      amount: gbp(pence),
      open: gbp(open),
      overdueDays,
    })),
    agreed: [...(partOf(data, "money")?.agreed ?? [])],
    agreedVersion: data.parts.money?.version ?? 0,
    holds: money.holds.map(holdAnswer),
    refundable: money.ledger.income
      .filter(({ refundable }) => refundable > 0)
      .map(({ id: of, route, on, pence, refundable, fromDeposit }) => ({
        id: of,
        method: route,
        on,
        amount: gbp(pence),
        left: gbp(refundable),
        fromDeposit,
      })),
    entries: paymentsAnswer(data, nameOf),
    undoable: undoable(data, money),
    toInvoice:
      draft === null
        ? null
        : {
            kind: draft.kind,
            lines: draft.lines.map((line) => ({ ...line, facts: { ...line.facts } })),
            net: draft.net,
            vat: draft.vat,
            total: draft.total,
          },
    disputedLines: disputedNow(data).map((line) => ({ ...line, facts: { ...line.facts } })),
    invoices: invoicesAnswer(invoices, nameOf),
  };
}
