/**
 * The store as the rest of the server sees it. `openDatabase` gives a {@link Database}; its `storeFor(scope)`
 * is the only way to the rows of a depot, its `system` holds the few things that come before a scope is known
 * (sign-in, set-up, links, jobs). Nothing outside `store/` touches the database.
 *
 * Instants are ISO 8601 UTC with milliseconds (`2026-07-04T09:00:00.000Z`); the store accepts any ISO instant
 * and writes that form. Ids are UUIDv7; a caller may bring its own. An expected "no" is returned
 * (`{ ok: false, why }`), a broken invariant throws. One long file, since it is read as one page.
 */
import type { BlockKind, EntryKind } from "@setfair/engine";
import type { DepotRecord, ErasedRecord, Receipt } from "@setfair/records";
import type { Role } from "../auth/roles.ts";
import type { JsonObject, Page, Paged, Scope } from "./basic-types.ts";
import type { FeedAnswer, FeedsStore, MessagesStore, VehicleDraftsStore } from "./message-types.ts";

export type { JsonObject, Page, Paged, Scope } from "./basic-types.ts";

/** The document was changed by someone else since it was read. */
export interface StaleVersion {
  readonly ok: false;
  readonly why: "stale";
  /** the version that is there now; 0 where there is none */
  readonly version: number;
}
export interface NotFound {
  readonly ok: false;
  readonly why: "notFound";
}
export interface Saved {
  readonly ok: true;
  readonly version: number;
}

// ---------------------------------------------------------------- firm, depot, people who sign in

export interface FirmRow {
  readonly id: string;
  readonly name: string;
  readonly document: JsonObject;
  readonly createdAt: string;
}
export interface DepotRow {
  readonly id: string;
  readonly firmId: string;
  readonly name: string;
  readonly timeZone: string;
  /** opening hours, address, telephone, slot length … */
  readonly document: JsonObject;
  readonly version: number;
}
export interface AccountRow {
  readonly id: string;
  readonly login: string;
  readonly name: string;
  readonly role: Role;
  readonly disabledAt: string | null;
  readonly createdAt: string;
}
export interface AccountSecret extends AccountRow, Scope {
  readonly passwordHash: string;
}

// ---------------------------------------------------------------- dated documents: vehicles and terms

/** One version of a vehicle description or of a set of terms; never changed once written. */
export interface DatedVersion {
  /** id of this very version: what a frozen result names */
  readonly versionId: string;
  /** the vehicle's id, or the name of the set of terms ("hire", "prices", "insurance", "words" …) */
  readonly of: string;
  /** civil date from which it holds */
  readonly validFrom: string;
  readonly document: JsonObject;
  /** SHA-256 of the canonical JSON of the document */
  readonly hash: string;
  readonly createdAt: string;
}
export interface DatedStore {
  /** Adds a version. The same document on the same date again gives the version that is there. */
  put(version: { of: string; validFrom: string; document: JsonObject }): Promise<DatedVersion>;
  /** The version in force on a civil date: latest `validFrom` not after it, the later written on a tie. */
  on(of: string, date: string): Promise<DatedVersion | null>;
  byId(versionId: string): Promise<DatedVersion | null>;
  /** All versions of one thing, oldest first. */
  versions(of: string): Promise<readonly DatedVersion[]>;
  /** All versions of several, oldest first within each. */
  versionsOf(of: readonly string[]): Promise<readonly DatedVersion[]>;
  /** Every thing as in force on a date. */
  allOn(date: string): Promise<readonly DatedVersion[]>;
}

/** A weighbridge ticket; `document` is the engine's VehicleTicket. */
export interface TicketRow {
  readonly id: string;
  readonly vehicleId: string;
  readonly weighedOn: string;
  readonly document: JsonObject;
  readonly by: string;
  readonly at: string;
  readonly withdrawnAt: string | null;
}

// ---------------------------------------------------------------- customers

/** A person. Everything about them is in `document` and goes when erased; the id stays. */
export interface CustomerRow {
  readonly id: string;
  /** shown and searched by; "" when erased */
  readonly name: string;
  readonly document: JsonObject;
  readonly version: number;
  readonly erasedAt: string | null;
}

// ---------------------------------------------------------------- hires

export const HIRE_STAGES = [
  "enquiry",
  "quote",
  "booked",
  "handedOver",
  "onHire",
  "returned",
  "settled",
  "closed",
  "lost",
  "cancelled",
  "noShow",
] as const;
export type HireStage = (typeof HIRE_STAGES)[number];

export interface HireRow {
  readonly id: string;
  /** short number said on the telephone, given by the store, unique in the depot: "26-0001" */
  readonly number: string;
  readonly stage: HireStage;
  readonly customerId: string | null;
  readonly customerName: string;
  readonly vehicleId: string | null;
  /** registration of the vehicle, for search and lists */
  readonly registration: string;
  /** keys out and keys back, instants */
  readonly from: string;
  readonly to: string;
  readonly version: number;
  readonly createdAt: string;
  readonly updatedAt: string;
}
export interface HireChange {
  readonly stage?: HireStage;
  readonly customerId?: string | null;
  readonly vehicleId?: string | null;
  readonly registration?: string;
  readonly from?: string;
  readonly to?: string;
}
export interface HireFilter extends Page {
  readonly stages?: readonly HireStage[];
  readonly vehicleId?: string;
  readonly customerId?: string;
  /** hires whose period touches [touchesFrom, touchesTo) */
  readonly touchesFrom?: string;
  readonly touchesTo?: string;
  /** hires whose keys go out in [startsFrom, …) */
  readonly startsFrom?: string;
  /** "soonest" (by `from`, the default) or "newest" first */
  readonly order?: "soonest" | "newest";
}
export type HireSearch = Omit<HireFilter, "vehicleId" | "customerId" | "order">;

/**
 * The documents of a hire. Personal ones are emptied when the hirer is erased.
 * `party` Party · `drivers` {drivers: Driver[]} · `trip` Trip · `load` LoadPlan · `quote` · `insurance` ·
 * `forecast` (last computed, unsigned) · `briefing` · `settlement` · `diary` {pinned} · `payer` · `licenceChecks`.
 */
export const HIRE_PARTS = {
  party: { personal: true },
  drivers: { personal: true },
  trip: { personal: true },
  load: { personal: true },
  contact: { personal: true },
  payer: { personal: true },
  licenceChecks: { personal: true },
  abroad: { personal: false },
  quote: { personal: false },
  insurance: { personal: false },
  forecast: { personal: false },
  briefing: { personal: false },
  readiness: { personal: false },
  settlement: { personal: false },
  diary: { personal: false },
  money: { personal: false },
  /** what the caller asked for beside party and dates: countries, extras */
  asked: { personal: false },
  /** waits for a vehicle: classes that would do, days that may give */
  waiting: { personal: false },
  /** how it ended: as what, why, and the scale as it was applied */
  ending: { personal: false },
  /** things that travel with it beside the extras of the quote */
  stock: { personal: false },
} as const satisfies Record<string, { personal: boolean }>;
export type HirePartName = keyof typeof HIRE_PARTS;
export interface HirePart {
  readonly name: HirePartName;
  readonly document: JsonObject;
  readonly version: number;
  readonly updatedAt: string;
  readonly updatedBy: string;
}

export interface BookingRow {
  readonly hireId: string;
  readonly vehicleId: string;
  readonly from: string;
  readonly to: string;
  readonly turnaroundMinutes: number;
}
export type BookingAnswer =
  | { readonly ok: true }
  /** the hires that hold the vehicle then, and the periods in which it is off the road */
  | {
      readonly ok: false;
      readonly why: "taken";
      readonly by: readonly BookingRow[];
      readonly blocks: readonly BlockRow[];
    };

/** A numbered thing (count 1) or a lot of like things; `document` holds what it puts aboard and its own dates. */
export interface StockItemRow {
  readonly id: string;
  readonly kind: string;
  readonly name: string;
  readonly size: string | null;
  readonly count: number;
  /** last day on which it may be used */
  readonly expiresOn: string | null;
  readonly retiredOn: string | null;
  readonly document: JsonObject;
  readonly version: number;
}
export interface StockHoldRow {
  readonly id: string;
  readonly itemId: string;
  readonly hireId: string;
  readonly count: number;
  readonly from: string;
  readonly to: string;
  readonly packedAt: string | null;
}
export interface StockEventRow {
  readonly id: string;
  readonly itemId: string;
  /** "added", "changed", "packed", "unpacked", "back", "retired" */
  readonly act: string;
  readonly document: JsonObject;
  readonly by: string;
  readonly at: string;
}

/** A vehicle that is not for hire in [from, to), without a hire. */
export interface BlockRow {
  readonly id: string;
  readonly vehicleId: string;
  readonly kind: BlockKind;
  readonly note: string;
  readonly from: string;
  readonly to: string;
  readonly by: string;
  readonly at: string;
}

// ---------------------------------------------------------------- upkeep

export const UPKEEP_KINDS = ["done", "damp", "water", "frost"] as const;
/** Something done to a vehicle or read off it. Kept for ever. */
export interface UpkeepRow {
  readonly id: string;
  readonly vehicleId: string;
  /** done: a duty of the due-date book · damp: a meter's reading · water: flushed, sanitised · frost: drained, laid up */
  readonly kind: (typeof UPKEEP_KINDS)[number];
  readonly on: string;
  readonly document: JsonObject;
  readonly by: string;
  readonly at: string;
}
export interface DefectRow {
  readonly id: string;
  readonly vehicleId: string;
  /** on which it was noted, where on a hire */
  readonly hireId: string | null;
  readonly class: "safety" | "comfort";
  readonly document: JsonObject;
  readonly by: string;
  readonly at: string;
  readonly closed: { readonly at: string; readonly by: string; readonly how: string } | null;
}
/** A hirer was told of a defect and signed for it. */
export interface DisclosureRow {
  readonly id: string;
  readonly defectId: string;
  readonly hireId: string;
  readonly signer: string;
  readonly by: string;
  readonly at: string;
}

// ---------------------------------------------------------------- records

export type StoredRecord = DepotRecord | ErasedRecord;
export type AppendAnswer =
  | {
      readonly ok: true;
      readonly id: string;
      readonly receipt: Receipt /** true when it was there already */;
      readonly again: boolean;
    }
  | {
      readonly ok: false;
      readonly id: string;
      /** `broken`: hash or shape is wrong · `gap`: send from `expectedSeq` on · `fork`: another record has this place in the chain · `conflict`: this id is there with another hash */
      readonly why: "broken" | "gap" | "fork" | "conflict";
      readonly expectedSeq?: number;
      readonly problems?: readonly { readonly path: string; readonly expected: string }[];
    };

// ---------------------------------------------------------------- the rest

export interface PhotographRow {
  /** SHA-256 of the JPEG, hex: its only name */
  readonly sha256: string;
  readonly bytes: number;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly hireId: string | null;
  readonly takenAt: string | null;
  readonly receivedAt: string;
}
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
/** Kept for ever: who let a finding pass, on which basis and why. */
export interface OverrideRow {
  readonly id: string;
  readonly hireId: string;
  readonly findingCode: string;
  /** Finding.about, "" where it has none */
  readonly about: string;
  readonly basis: "cover" | "policy";
  readonly reason: string;
  readonly by: string;
  readonly at: string;
}
/** What changed about a hire after it was booked; the document is the desk's (`desk/changes`), empty once the hirer is erased. */
export interface ChangeRow {
  readonly id: string;
  readonly hireId: string;
  readonly kind: string;
  readonly document: JsonObject;
  readonly by: string;
  readonly at: string;
}
/** accept, dispute: the hirer of a line · reply, withdraw: the desk · estimate, invoice: cost of a repair · second: a second person for a late charge · hold: until when the disputed part is kept · lost: property left behind */
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
/** A promise to the hirer with a day, or a plain note. */
export interface NoteRow {
  readonly id: string;
  readonly hireId: string;
  readonly kind: "note" | "promise";
  readonly text: string;
  /** the moment before the keys, at them, at the return, or a day (`dueAt`); null: it stands on the hire only */
  readonly moment: NoteMoment | null;
  /** who sees to it, by the account's id; null: whoever is there */
  readonly owner: string | null;
  readonly dueAt: string | null;
  readonly doneAt: string | null;
  readonly doneBy: string | null;
  readonly by: string;
  readonly at: string;
}
export const NOTE_MOMENTS = ["preparing", "counter", "return", "day"] as const;
export type NoteMoment = (typeof NOTE_MOMENTS)[number];
/** What a depot did to a dated rule (engine: RuleChange); `document` is that change without its kind. */
export interface RuleChangeRow {
  readonly id: string;
  readonly ruleId: string;
  readonly kind: "correct" | "confirm" | "withdraw";
  readonly document: JsonObject;
  readonly by: string;
  readonly at: string;
}
export interface HirerLinkRow {
  readonly id: string;
  readonly hireId: string;
  readonly expiresAt: string;
  readonly revokedAt: string | null;
  readonly createdAt: string;
}
/** What was signed, accepted, paid or refused on, as shown. Never changed. */
export interface FrozenRow {
  readonly id: string;
  readonly hireId: string;
  /** "forecast", "load", "quote", "briefing", "settlement", "glass" … */
  readonly room: string;
  readonly document: JsonObject;
  readonly hash: string;
  readonly by: string;
  readonly at: string;
}
export interface AuditRow {
  readonly id: string;
  readonly at: string;
  /** account id, "hirer" or "system" */
  readonly by: string;
  readonly act: string;
  readonly about: string;
  readonly document: JsonObject;
}

export interface JobRow {
  readonly id: string;
  readonly firmId: string;
  readonly depotId: string;
  readonly kind: string;
  readonly payload: JsonObject;
  readonly runAt: string;
  /** how often it was begun */
  readonly attempts: number;
  readonly state: "waiting" | "done" | "dead";
  readonly lockedUntil: string | null;
  readonly lastError: string | null;
  readonly dedupeKey: string | null;
}
export interface NewJob {
  readonly kind: string;
  readonly payload: JsonObject;
  /** now where left out */
  readonly runAt?: string;
  /** a second job with this key in the depot is not added, whatever became of the first */
  readonly dedupeKey?: string;
}

/** Everything of one depot. Inside `within` use only the store that is handed in. */
export interface Store {
  readonly scope: Scope;
  /** Runs all or nothing; nested calls join the outer one. A thrown error rolls back. */
  within<T>(work: (store: Store) => Promise<T>): Promise<T>;

  readonly firm: { get(): Promise<FirmRow> };
  readonly depot: {
    get(): Promise<DepotRow>;
    update(
      change: { name?: string; timeZone?: string; document?: JsonObject },
      version: number,
    ): Promise<Saved | StaleVersion>;
  };
  readonly accounts: {
    list(): Promise<readonly AccountRow[]>;
    get(id: string): Promise<AccountRow | null>;
    create(account: {
      id?: string;
      login: string;
      name: string;
      role: Role;
      passwordHash: string;
    }): Promise<{ ok: true; account: AccountRow } | { ok: false; why: "loginTaken" }>;
    update(
      id: string,
      change: { name?: string; role?: Role; passwordHash?: string; disabled?: boolean },
    ): Promise<boolean>;
  };
  readonly vehicles: DatedStore;
  readonly tickets: {
    add(ticket: {
      vehicleId: string;
      weighedOn: string;
      document: JsonObject;
      by: string;
    }): Promise<TicketRow>;
    /** Oldest weighing first, the withdrawn ones with the rest. */
    ofVehicle(vehicleId: string): Promise<readonly TicketRow[]>;
    /** Of several, alike. */
    ofVehicles(vehicleIds: readonly string[]): Promise<readonly TicketRow[]>;
    /** False where there is no such ticket or it is withdrawn already. */
    withdraw(vehicleId: string, id: string): Promise<boolean>;
  };
  readonly plates: {
    /** The other vehicle that has this registration number on a civil date or after it. Inside a transaction only: it holds whoever else asks until that ends. */
    holder(asked: { registration: string; exceptVehicleId: string; from: string }): Promise<string | null>;
  };
  readonly terms: DatedStore;
  readonly customers: {
    create(customer: { id?: string; name: string; document: JsonObject }): Promise<CustomerRow>;
    get(id: string): Promise<CustomerRow | null>;
    update(
      id: string,
      change: { name: string; document: JsonObject },
      version: number,
    ): Promise<Saved | StaleVersion | NotFound>;
    search(text: string, page?: Page): Promise<Paged<CustomerRow>>;
    /** Empties the person, the personal parts of their hires, licence numbers and the records that name them (`refs.personId`). */
    erase(id: string, by: string): Promise<{ readonly recordsErased: number } | null>;
  };
  readonly hires: {
    create(hire: {
      id?: string;
      from: string;
      to: string;
      customerId?: string | null;
      stage?: HireStage;
    }): Promise<HireRow>;
    get(id: string): Promise<HireRow | null>;
    byNumber(number: string): Promise<HireRow | null>;
    update(id: string, change: HireChange, version: number): Promise<Saved | StaleVersion | NotFound>;
    /** By `from`, then id. */
    list(filter?: HireFilter): Promise<Paged<HireRow>>;
    /** All of them, whatever their number: for what is bounded by its stage or its dates. */
    all(filter: Omit<HireFilter, "limit" | "after">): Promise<readonly HireRow[]>;
    /** All whose keys come back in [from, to), by `to`, at any stage. */
    ending(from: string, to: string): Promise<readonly HireRow[]>;
    /** How many there are at each stage; a stage without any is left out. */
    counts(stages: readonly HireStage[]): Promise<Partial<Record<HireStage, number>>>;
    /** Every word must begin a word of the name, the registration, the number or the telephone; newest `from` first. */
    search(text: string, filter?: HireSearch): Promise<Paged<HireRow>>;
    part(hireId: string, name: HirePartName): Promise<HirePart | null>;
    parts(hireId: string): Promise<Partial<Record<HirePartName, HirePart>>>;
    /** Likewise for many in one query, by hire; `names` keeps to some of them. */
    partsOf(
      hireIds: readonly string[],
      names?: readonly HirePartName[],
    ): Promise<ReadonlyMap<string, Partial<Record<HirePartName, HirePart>>>>;
    /** `version` 0 for a part that is not there yet. */
    putPart(
      hireId: string,
      name: HirePartName,
      document: JsonObject,
      version: number,
      by: string,
    ): Promise<Saved | StaleVersion | NotFound>;
  };
  readonly bookings: {
    /** Takes the vehicle for [from, to + turnaround); replaces what this hire held. No vehicle is ever booked twice. */
    book(booking: BookingRow): Promise<BookingAnswer>;
    release(hireId: string): Promise<boolean>;
    /** What touches [from, to), by vehicle and time. */
    between(from: string, to: string, vehicleId?: string | readonly string[]): Promise<readonly BookingRow[]>;
    of(hireId: string): Promise<BookingRow | null>;
  };
  readonly blocks: {
    /** Takes the vehicle off the road for [from, to), unless a hire or another such period holds it then. */
    add(
      block: Pick<BlockRow, "vehicleId" | "kind" | "note" | "from" | "to" | "by">,
    ): Promise<
      { readonly ok: true; readonly block: BlockRow } | Exclude<BookingAnswer, { readonly ok: true }>
    >;
    remove(id: string): Promise<BlockRow | null>;
    /** What touches [from, to), by vehicle and time. */
    between(from: string, to: string, vehicleIds?: readonly string[]): Promise<readonly BlockRow[]>;
  };
  /** What travels with hires and comes back. */
  readonly stock: {
    /** Inside a transaction only: it holds whoever else asks what is free until that ends. */
    lock(): Promise<void>;
    /** By kind and name, what was retired too. */
    items(): Promise<readonly StockItemRow[]>;
    addItem(item: Omit<StockItemRow, "id" | "version">): Promise<StockItemRow>;
    /** False where somebody changed it meanwhile. */
    changeItem(id: string, item: Omit<StockItemRow, "id" | "version">, version: number): Promise<boolean>;
    /** What touches [from, to), by its start. */
    holdsBetween(from: string, to: string): Promise<readonly StockHoldRow[]>;
    holdsOf(hireIds: readonly string[]): Promise<readonly StockHoldRow[]>;
    /** Puts what a hire holds in place of what it held; what stays on the same thing stays packed. */
    replaceHolds(
      hireId: string,
      period: { readonly from: string; readonly to: string },
      seats: readonly { readonly itemId: string; readonly count: number }[],
    ): Promise<void>;
    /** From one thing to a like one; false where it is packed or gone. */
    moveHold(move: { readonly hireId: string; readonly from: string; readonly to: string }): Promise<boolean>;
    setPacked(holdId: string, isPacked: boolean): Promise<boolean>;
    /** It is back now; false where it never went. */
    endHold(holdId: string): Promise<boolean>;
    release(hireId: string): Promise<void>;
    addEvent(event: Omit<StockEventRow, "id" | "at">): Promise<void>;
    /** Oldest first. */
    events(itemId: string): Promise<readonly StockEventRow[]>;
  };
  readonly upkeep: {
    add(entry: Omit<UpkeepRow, "id" | "at">): Promise<UpkeepRow>;
    /** Oldest first. */
    ofVehicles(vehicleIds: readonly string[]): Promise<readonly UpkeepRow[]>;
  };
  readonly defects: {
    add(defect: Omit<DefectRow, "id" | "at" | "closed">): Promise<DefectRow>;
    get(id: string): Promise<DefectRow | null>;
    /** Oldest first, closed ones too. */
    ofVehicles(vehicleIds: readonly string[]): Promise<readonly DefectRow[]>;
    /** False where it is closed already. */
    close(id: string, how: { readonly by: string; readonly how: string }): Promise<boolean>;
    disclose(told: Omit<DisclosureRow, "id" | "at">): Promise<DisclosureRow>;
    disclosures(hireIds: readonly string[]): Promise<readonly DisclosureRow[]>;
  };
  readonly records: {
    /** Each record by itself, in the order given; what is there already answers with its receipt again. */
    append(records: readonly unknown[]): Promise<readonly AppendAnswer[]>;
    get(id: string): Promise<{ readonly record: StoredRecord; readonly receipt: Receipt } | null>;
    /** In arrival order. `afterSeq` = receipt seq of the last seen. */
    list(filter: {
      hireId?: string;
      hireIds?: readonly string[];
      vehicleId?: string;
      chain?: string;
      kind?: string;
      afterSeq?: number;
      limit?: number;
    }): Promise<readonly { readonly record: StoredRecord; readonly receipt: Receipt }[]>;
    /** Last receipt of the depot: its hash is the head. */
    head(): Promise<Receipt | null>;
    /** All records and receipts of the depot, for `setfair verify`. */
    export(): Promise<{ readonly records: readonly StoredRecord[]; readonly receipts: readonly Receipt[] }>;
    erase(ids: readonly string[], by: string): Promise<number>;
  };
  readonly photographs: {
    add(photograph: Omit<PhotographRow, "receivedAt">): Promise<PhotographRow>;
    get(sha256: string): Promise<PhotographRow | null>;
    ofHire(hireId: string): Promise<readonly PhotographRow[]>;
  };
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
  readonly changes: {
    add(change: Omit<ChangeRow, "id" | "at">): Promise<ChangeRow>;
    get(id: string): Promise<ChangeRow | null>;
    /** Of several hires, oldest first. */
    ofHires(hireIds: readonly string[]): Promise<readonly ChangeRow[]>;
  };
  readonly settlementEntries: {
    add(entry: Omit<SettlementEntryRow, "id" | "at">): Promise<SettlementEntryRow>;
    /** Of several hires, oldest first. */
    ofHires(hireIds: readonly string[]): Promise<readonly SettlementEntryRow[]>;
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
  readonly overrides: {
    add(override: Omit<OverrideRow, "id" | "at">): Promise<OverrideRow>;
    ofHire(hireId: string): Promise<readonly OverrideRow[]>;
    ofHires(hireIds: readonly string[]): Promise<readonly OverrideRow[]>;
  };
  readonly notes: {
    add(note: Omit<NoteRow, "id" | "at" | "doneAt" | "doneBy">): Promise<NoteRow>;
    get(id: string): Promise<NoteRow | null>;
    /** Ticks it, once. */
    done(id: string, by: string): Promise<boolean>;
    /** Takes a tick back. */
    reopen(id: string): Promise<boolean>;
    ofHire(hireId: string): Promise<readonly NoteRow[]>;
    /** Notes and promises that have a moment and no tick, by due time. */
    open(): Promise<readonly NoteRow[]>;
  };
  /** What this depot did to the dated rules, in the order of writing; never changed. */
  readonly rules: {
    add(change: Omit<RuleChangeRow, "id" | "at">): Promise<RuleChangeRow>;
    all(): Promise<readonly RuleChangeRow[]>;
  };
  readonly links: {
    /** `tokenHash` from `auth`: the token itself is never stored. */
    create(link: { hireId: string; tokenHash: string; expiresAt: string }): Promise<HirerLinkRow>;
    ofHire(hireId: string): Promise<readonly HirerLinkRow[]>;
    revoke(id: string): Promise<boolean>;
  };
  readonly frozen: {
    add(frozen: { hireId: string; room: string; document: JsonObject; by: string }): Promise<FrozenRow>;
    get(id: string): Promise<FrozenRow | null>;
    ofHire(hireId: string): Promise<readonly FrozenRow[]>;
    ofHires(hireIds: readonly string[]): Promise<readonly FrozenRow[]>;
  };
  readonly licences: {
    /** Kept encrypted; erased at `eraseAt`, by a job that this adds. */
    put(licence: { hireId: string; driverId: string; number: string; eraseAt: string }): Promise<void>;
    /** Reading is written to the audit. */
    read(hireId: string, driverId: string, by: string): Promise<string | null>;
    /** Erases one at once; false where there was none. */
    erase(hireId: string, driverId: string): Promise<boolean>;
    eraseDue(): Promise<number>;
  };
  readonly messages: MessagesStore;
  readonly feeds: FeedsStore;
  readonly vehicleDrafts: VehicleDraftsStore;
  readonly jobs: { add(job: NewJob): Promise<{ readonly added: boolean }> };
  readonly audit: {
    add(entry: { by: string; act: string; about: string; document?: JsonObject }): Promise<void>;
    /** Newest first; `about` keeps to one thing, e.g. a hire's id. */
    list(filter?: Page & { readonly about?: string }): Promise<Paged<AuditRow>>;
  };
}

export interface SessionAnswer {
  readonly scope: Scope;
  readonly account: AccountRow;
  readonly expiresAt: string;
}
export interface LinkAnswer {
  readonly scope: Scope;
  readonly hireId: string;
  readonly linkId: string;
  readonly expiresAt: string;
}
export interface FirstFirm {
  readonly firm: { readonly name: string; readonly document?: JsonObject };
  readonly depot: { readonly name: string; readonly timeZone: string; readonly document: JsonObject };
  readonly terms: readonly {
    readonly of: string;
    readonly validFrom: string;
    readonly document: JsonObject;
  }[];
  readonly manager: { readonly login: string; readonly name: string; readonly passwordHash: string };
}

/** What comes before a scope is known. Tokens come as hashes only (`auth/tokens.ts`). */
export interface SystemStore {
  firmCount(): Promise<number>;
  /** Firm, depot, terms and first manager in one go. */
  createFirm(first: FirstFirm): Promise<{ readonly scope: Scope; readonly accountId: string }>;
  depots(): Promise<readonly DepotRow[]>;
  accountByLogin(login: string): Promise<AccountSecret | null>;
  createSession(session: {
    tokenHash: string;
    accountId: string;
    scope: Scope;
    expiresAt: string;
  }): Promise<void>;
  /** Null when unknown, expired, ended, or the account is disabled. */
  session(tokenHash: string): Promise<SessionAnswer | null>;
  endSession(tokenHash: string): Promise<void>;
  endSessionsOf(accountId: string): Promise<void>;
  createSetupLink(link: { tokenHash: string; expiresAt: string }): Promise<void>;
  /** Serves once: true for the first that takes it in time, within the same transaction as the firm. */
  setUp(
    tokenHash: string,
    first: FirstFirm,
  ): Promise<
    | { readonly ok: true; readonly scope: Scope; readonly accountId: string }
    | { readonly ok: false; readonly why: "linkUnusable" }
  >;
  /** Null when unknown, expired or revoked. */
  hirerLink(tokenHash: string): Promise<LinkAnswer | null>;
  /** Null when unknown or revoked. */
  calendarFeed(tokenHash: string): Promise<FeedAnswer | null>;
  /** Erased ids, for re-applying after a restore. */
  erasures(): Promise<readonly Erasure[]>;
  applyErasures(erasures: readonly Erasure[]): Promise<number>;
  readonly jobs: JobQueue;
}
export interface Erasure extends Scope {
  readonly kind: "record" | "customer" | "licence";
  readonly targetId: string;
  readonly at: string;
}

/** At least once: a job that is begun and not finished within its lease is handed out again. */
export interface JobQueue {
  /** Takes up to `count` due jobs for `leaseSeconds`. */
  claim(count: number, leaseSeconds: number): Promise<readonly JobRow[]>;
  finish(id: string): Promise<void>;
  /** Waits longer after each attempt; dead after the last. */
  fail(id: string, error: string): Promise<void>;
  counts(): Promise<{ readonly waiting: number; readonly done: number; readonly dead: number }>;
}

export interface Database {
  readonly kind: "sqlite" | "postgres";
  storeFor(scope: Scope): Store;
  readonly system: SystemStore;
  /** SQLite: a consistent copy while in use. PostgreSQL: refused with a word about pg_dump. */
  backupTo(path: string): Promise<void>;
  close(): Promise<void>;
}

export interface OpenOptions {
  /** holds setfair.sqlite, the key and the list of erasures; made when it is not there */
  readonly dataFolder: string;
  /** PostgreSQL where given (SETFAIR_DATABASE_URL) */
  readonly url?: string;
  /** 32 bytes in hex or base64 (SETFAIR_KEY); else the key file in the data folder, made on first use with mode 0600 */
  readonly key?: string;
  /** the clock, for tests */
  readonly now?: () => Date;
}
