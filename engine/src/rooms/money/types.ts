import type { Money } from "../../base/money.ts";
import type { IsoDate, IsoInstant } from "../../base/time.ts";
import type { VatKind } from "../quote/types.ts";

/**
 * What may stand in the ledger of a hire. Entries are appended and never changed; `failed` (money that did not
 * arrive) and `correction` (keyed in wrongly) undo the one entry that they name.
 */
export const ENTRY_KINDS = [
  "payment",
  "refund",
  "depositHeld",
  "depositReleased",
  "depositCharged",
  "charge",
  "credit",
  "failed",
  "correction",
] as const;
export type EntryKind = (typeof ENTRY_KINDS)[number];

/** How money moves. `cardHold` is a pre-authorisation: nothing moves until it is charged. `asHeld`: by the way it was held. */
export const ROUTES = ["card", "transfer", "cash", "cardHold", "asHeld"] as const;
export type Route = (typeof ROUTES)[number];

/** Kinds of line by which VAT is decided; the table is dated data (`vat.gb.line.<kind>`). */
export const LINE_KINDS = [
  "hire",
  "extra",
  "mileage",
  "fuel",
  "cleaning",
  "late",
  "damage",
  "kit",
  "fine",
  "toll",
  "administration",
  "cancellation",
  "deposit",
] as const;
export type LineKind = (typeof LINE_KINDS)[number];

export interface LedgerEntry {
  readonly id: string;
  readonly kind: EntryKind;
  /** whole pence, more than 0; the kind says which way it goes */
  readonly pence: number;
  /** the day on which it happened */
  readonly on: IsoDate;
  /** when it was entered */
  readonly at: IsoInstant;
  readonly route: Route | null;
  /** the entry that this pays back, releases, charges or undoes */
  readonly of: string | null;
  /** of a charge or credit */
  readonly line: LineKind | null;
  readonly note: string | null;
}
/** An entry about to be added. */
export type NewEntry = Omit<LedgerEntry, "at">;

/** Money that came in and what of it may still go back, by the way it came. */
export interface Income {
  readonly id: string;
  readonly route: Route;
  readonly on: IsoDate;
  readonly pence: number;
  readonly refunded: number;
  readonly refundable: number;
  /** a part of the deposit that was kept, rather than a payment */
  readonly fromDeposit: boolean;
}
/** One deposit held: as money, or as a hold on a card. */
export interface Holding {
  readonly id: string;
  readonly route: Route;
  readonly on: IsoDate;
  readonly isHold: boolean;
  readonly pence: number;
  readonly charged: number;
  readonly released: number;
  readonly remaining: number;
}

/** Everything that follows from the entries; whole pence. */
export interface Ledger {
  readonly paid: number;
  readonly refunded: number;
  /** charges beyond price and settlement, less credits */
  readonly charged: number;
  /** taken from deposits, to the hirer's account */
  readonly fromDeposit: number;
  readonly income: readonly Income[];
  readonly holdings: readonly Holding[];
  /** deposits still held as money */
  readonly heldMoney: number;
  /** deposits still held on cards, lapsed or not */
  readonly heldOnCards: number;
  readonly cashIn: number;
  readonly cashOut: number;
  /** ids of entries that were undone, and by which */
  readonly undone: Readonly<Record<string, string>>;
}

/** A part of the price and the day by which it is to be paid. */
export interface Instalment {
  /** text `instalment.<what>` */
  readonly what: "bookingDeposit" | "balance" | "part" | "charges";
  readonly dueOn: IsoDate;
  readonly pence: number;
  readonly paid: number;
  readonly open: number;
  /** days over, where something is open after the day; else 0 */
  readonly overdueDays: number;
}

export interface VatPart {
  readonly kind: VatKind;
  readonly ratePercent: number;
  readonly net: Money<"GBP">;
  readonly vat: Money<"GBP">;
  readonly gross: Money<"GBP">;
}
/** A line that is to be invoiced or was; negative where it takes back. */
export interface InvoiceLine {
  /** stable within the hire: what was invoiced under a key is not invoiced again */
  readonly key: string;
  readonly line: LineKind;
  /** id of a text, with its facts; or the text of whoever charged it */
  readonly text: string;
  readonly facts: Readonly<Record<string, string | number>>;
  readonly vat: VatKind;
  readonly ratePercent: number;
  readonly netPence: number;
  readonly vatPence: number;
  readonly grossPence: number;
}
/** An invoice, or with a negative total a credit note. */
export interface InvoiceDraft {
  readonly kind: "invoice" | "creditNote";
  readonly lines: readonly InvoiceLine[];
  readonly parts: readonly VatPart[];
  readonly net: Money<"GBP">;
  readonly vat: Money<"GBP">;
  readonly total: Money<"GBP">;
}

export const ACCOUNTS = [
  "card",
  "bank",
  "cash",
  "hirers",
  "deposits",
  "sales.standard",
  "sales.exempt",
  "sales.outsideScope",
  "vat",
] as const;
export type Account = (typeof ACCOUNTS)[number];
/** One side of a double entry: debit positive, credit negative, whole pence. All postings of one event sum to nothing. */
export interface Posting {
  readonly of: string;
  readonly on: IsoDate;
  readonly account: Account;
  readonly pence: number;
}
