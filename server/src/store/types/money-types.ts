/** The ledger, invoices and what is said about a settlement. */

import type { EntryKind } from "@setfair/engine";
import type { JsonObject } from "../basic-types.ts";

/** One entry of a hire's ledger. */
export interface PaymentRow {
  readonly id: string;
  readonly hireId: string;
  readonly kind: EntryKind;
  readonly currency: string;
  /** whole pence, never negative; the kind says which way it goes */
  readonly pence: number;
  /** the day on which it happened */
  readonly on: string;
  /** the entry that it pays back, releases, charges or undoes */
  readonly of: string | null;
  /** on, method, note, line … */
  readonly document: JsonObject;
  readonly by: string;
  readonly at: string;
}
export const INVOICE_SERIES = ["invoice", "creditNote"] as const;
/** An invoice or credit note, frozen as issued. */
export interface InvoiceRow {
  readonly id: string;
  readonly hireId: string;
  readonly series: (typeof INVOICE_SERIES)[number];
  /** runs through the firm without a hole, by series */
  readonly number: number;
  readonly on: string;
  /** of a credit note: the invoice that it takes back whole */
  readonly of: string | null;
  readonly document: JsonObject;
  readonly by: string;
  readonly at: string;
}
/** accept, dispute: the hirer of a line · reply, withdraw: the desk · estimate, invoice: cost of a repair · second: a second person for a late charge · hold: until when the disputed part is kept · lost: property left behind · cleaning: hours beyond what is included · loss: what a late return really cost · age: of a part · awaiting: the most that an unknown cost may be · claim: what came to light later · file: an insurer's or a third party's · notice: a fine or a toll passed on · mended: a mark was repaired */
export const SETTLEMENT_ENTRIES = [
  "accept",
  "dispute",
  "reply",
  "withdraw",
  "estimate",
  "invoice",
  "second",
  "hold",
  "lost",
  "cleaning",
  "loss",
  "age",
  "awaiting",
  "claim",
  "file",
  "notice",
  "mended",
] as const;
export interface SettlementEntryRow {
  readonly id: string;
  readonly hireId: string;
  readonly kind: (typeof SETTLEMENT_ENTRIES)[number];
  /** a line, a difference or a thing; "" where it is about the whole */
  readonly about: string;
  readonly document: JsonObject;
  /** an account, or "hirer" where it came by the hirer's link */
  readonly by: string;
  readonly at: string;
}

/** Part of the depot's `Store`. */
export interface MoneyStores {
  readonly payments: {
    /** The same id again answers the first; nothing is paid twice. The day is the document's `on`, else today's in UTC. */
    add(
      payment: Omit<PaymentRow, "id" | "at" | "on" | "of"> & { id?: string; of?: string | null },
    ): Promise<PaymentRow>;
    /** By the day on which they happened, both days with. */
    between(from: string, to: string): Promise<readonly PaymentRow[]>;
    /** Keeps the ledger of a hire to this transaction until it ends, so that two refunds at once cannot both pass. */
    lock(hireId: string): Promise<void>;
    ofHire(hireId: string): Promise<readonly PaymentRow[]>;
    ofHires(hireIds: readonly string[]): Promise<readonly PaymentRow[]>;
  };
  readonly invoices: {
    /** Takes the next number of its series in the same transaction. */
    issue(
      invoice: Omit<InvoiceRow, "id" | "at" | "number" | "of"> & { of?: string | null },
    ): Promise<InvoiceRow>;
    get(id: string): Promise<InvoiceRow | null>;
    ofHires(hireIds: readonly string[]): Promise<readonly InvoiceRow[]>;
    /** By their day, both days with. */
    between(from: string, to: string): Promise<readonly InvoiceRow[]>;
  };
  readonly settlementEntries: {
    add(entry: Omit<SettlementEntryRow, "id" | "at">): Promise<SettlementEntryRow>;
    /** Of several hires, oldest first. */
    ofHires(hireIds: readonly string[]): Promise<readonly SettlementEntryRow[]>;
  };
}
