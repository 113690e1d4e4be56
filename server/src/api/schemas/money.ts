import { ACCOUNTS, ENTRY_KINDS, LINE_KINDS } from "@setfair/engine";
import * as z from "zod";
import { INVOICE_SERIES } from "../../store/types.ts";
import { dateSchema, idSchema, instantSchema, moneySchema, textSchema } from "./common.ts";
import { named } from "./named.ts";

/** whole pence, more than 0 */
const penceSchema = z.int().min(1).max(5_000_000);
const vatSchema = z.enum(["standard", "exempt", "outsideScope"]);

/** What may be recorded as a payment; charges, credits and what undoes another have operations of their own. */
export const PAID_KINDS = ["payment", "depositHeld", "depositReleased", "depositCharged", "refund"] as const;

/** Recorded by hand. The pence are never negative; the kind says which way it goes. */
export const newPaymentSchema = named(
  "NewPayment",
  z.strictObject({
    /** made by the client, so that sending twice records once */
    id: idSchema,
    kind: z.enum(PAID_KINDS),
    pence: penceSchema,
    on: dateSchema,
    method: z.enum(["card", "transfer", "cash", "cardHold"]),
    /** the payment that is paid back, or the deposit that is charged or given back; without it the first that came the same way */
    of: idSchema.optional(),
    note: z.string().max(200).optional(),
  }),
);

export const paymentSchema = named(
  "Payment",
  z.object({
    id: idSchema,
    kind: z.enum(ENTRY_KINDS),
    amount: moneySchema,
    on: dateSchema,
    method: z.string(),
    of: z.string().nullable(),
    /** by which entry it was undone */
    undoneBy: z.string().nullable(),
    note: z.string().nullable(),
    by: z.string(),
    at: instantSchema,
  }),
);

export const scheduleSchema = named(
  "PaymentParts",
  z.strictObject({
    /** in whole pence; they must sum to the price. Empty: booking deposit and balance by the terms */
    agreed: z.array(z.strictObject({ dueOn: dateSchema, pence: penceSchema })).max(12),
  }),
);

export const newChargeSchema = named(
  "NewCharge",
  z.strictObject({
    id: idSchema,
    kind: z.enum(["charge", "credit"]),
    line: z.enum(LINE_KINDS),
    pence: penceSchema,
    on: dateSchema,
    /** what for: stands on the invoice */
    note: textSchema(200),
  }),
);

export const newRefundSchema = named(
  "NewRefund",
  z.strictObject({
    id: idSchema,
    /** the payment, or the part kept from a deposit, that is paid back by the way it came */
    of: idSchema,
    pence: penceSchema,
    on: dateSchema,
    reason: textSchema(200),
  }),
);

export const undoEntrySchema = named(
  "UndoEntry",
  z.strictObject({
    id: idSchema,
    entryId: idSchema,
    /** failed: the money did not arrive · correction: it was keyed in wrongly */
    kind: z.enum(["failed", "correction"]),
    on: dateSchema,
    reason: textSchema(200),
  }),
);

export const creditInvoiceSchema = named("CreditInvoice", z.strictObject({ reason: textSchema(200) }));
export const byInvoice = z.object({ id: idSchema, invoiceId: idSchema });

const invoiceLineSchema = named(
  "InvoiceLine",
  z.object({
    key: z.string(),
    line: z.enum(LINE_KINDS),
    /** id of a text, with its facts */
    text: z.string(),
    facts: z.record(z.string(), z.union([z.string(), z.number()])),
    vat: vatSchema,
    ratePercent: z.number(),
    netPence: z.int(),
    vatPence: z.int(),
    grossPence: z.int(),
  }),
);
const draftSchema = named(
  "InvoiceDraft",
  z.object({
    kind: z.enum(INVOICE_SERIES),
    lines: z.array(invoiceLineSchema),
    net: moneySchema,
    vat: moneySchema,
    total: moneySchema,
  }),
);
const invoiceSchema = named(
  "Invoice",
  z.object({
    id: idSchema,
    number: z.string(),
    kind: z.enum(INVOICE_SERIES),
    on: dateSchema,
    total: moneySchema,
    vat: moneySchema,
    /** the invoice that this takes back, by its number */
    of: z.string().nullable(),
    /** the credit note that took it back, by its number */
    creditedBy: z.string().nullable(),
    reason: z.string().nullable(),
    by: z.string(),
  }),
);
const instalmentSchema = named(
  "Instalment",
  z.object({
    what: z.enum(["bookingDeposit", "balance", "part", "charges"]),
    dueOn: dateSchema,
    amount: moneySchema,
    open: moneySchema,
    overdueDays: z.int(),
  }),
);
const holdSchema = named(
  "CardHold",
  z.object({
    id: idSchema,
    amount: moneySchema,
    on: dateSchema,
    /** last day on which it stands */
    standsTo: dateSchema,
    /** last day on which the deposit is needed */
    neededTo: dateSchema,
    state: z.enum(["stands", "lapsesBefore", "lapsed"]),
    daysLeft: z.int(),
  }),
);

/** The money of one hire; everything but entries and invoices is computed. */
export const hireMoneySchema = named(
  "HireMoney",
  z.object({
    price: moneySchema,
    /** price, settlement, charges less credits, without what is disputed */
    due: moneySchema,
    /** fines and tolls that the hirer disputes and has not paid: not asked for until that is settled */
    disputed: moneySchema,
    settled: moneySchema,
    owed: moneySchema,
    depositDue: moneySchema,
    depositHeld: moneySchema,
    instalments: z.array(instalmentSchema),
    agreed: z.array(z.object({ dueOn: dateSchema, pence: z.int() })),
    /** of the agreed parts: what a change is based on; 0 where none were ever agreed */
    agreedVersion: z.int(),
    holds: z.array(holdSchema),
    /** what may still be paid back, each by the way it came */
    refundable: z.array(
      z.object({
        id: idSchema,
        method: z.string(),
        on: dateSchema,
        amount: moneySchema,
        left: moneySchema,
        fromDeposit: z.boolean(),
      }),
    ),
    entries: z.array(paymentSchema),
    /** what may be undone */
    undoable: z.array(z.object({ id: idSchema, failed: z.boolean() })),
    /** null: nothing is to be invoiced, or no quote was accepted */
    toInvoice: draftSchema.nullable(),
    /** what the hirer disputes: named on an invoice, not asked for, no part of its sums */
    disputedLines: z.array(invoiceLineSchema),
    invoices: z.array(invoiceSchema),
  }),
);

export const moneyAbout = z.object({
  hireId: idSchema,
  reference: z.string(),
  customer: z.string(),
  registration: z.string(),
  stage: z.string(),
});

export const firmOnInvoicesSchema = named(
  "FirmOnInvoices",
  z.strictObject({
    name: textSchema(120),
    address: textSchema(300),
    /** null: not registered for VAT, or not entered */
    vatNumber: z
      .string()
      .regex(/^[A-Z]{2}[0-9A-Z]{5,14}$/, "expected a country and the number, like GB000000000")
      .nullable(),
  }),
);

/** The money of the depot. */
export const moneyPageSchema = named(
  "MoneyPage",
  z.object({
    today: dateSchema,
    held: z.object({
      deposits: moneySchema,
      prepaid: moneySchema,
      total: moneySchema,
      onCards: moneySchema,
      hires: z.array(
        moneyAbout.extend({ deposits: moneySchema, prepaid: moneySchema, onCards: moneySchema }),
      ),
    }),
    overdue: z.array(
      moneyAbout.extend({
        what: z.enum(["bookingDeposit", "balance", "part", "charges"]),
        dueOn: dateSchema,
        open: moneySchema,
        days: z.int(),
      }),
    ),
    toPayBack: z.array(moneyAbout.extend({ amount: moneySchema })),
    holds: z.array(moneyAbout.extend({ hold: holdSchema })),
    failed: z.array(
      moneyAbout.extend({
        amount: moneySchema,
        on: dateSchema,
        note: z.string().nullable(),
        owed: moneySchema,
      }),
    ),
    vat: z.array(
      z.object({
        line: z.enum(LINE_KINDS),
        kind: vatSchema,
        ratePercent: z.number(),
        source: z.string(),
        isRead: z.boolean(),
        toConfirm: z.string().nullable(),
      }),
    ),
    firm: firmOnInvoicesSchema.nullable(),
    /** what a change of the firm is based on */
    firmVersion: z.string(),
    /** accounts of the export */
    accounts: z.array(z.enum(ACCOUNTS)),
  }),
);

export const postingsQuerySchema = z.object({ from: dateSchema, to: dateSchema });
