/** Customers, hires and what holds a vehicle. */

import type { BlockKind } from "@setfair/engine";
import type { JsonObject, NotFound, Page, Paged, Saved, StaleVersion } from "../basic-types.ts";

/** A person. Everything about them is in `document` and goes when erased; the id stays. */
export interface CustomerRow {
  readonly id: string;
  /** shown and searched by; "" when erased */
  readonly name: string;
  readonly document: JsonObject;
  readonly version: number;
  readonly erasedAt: string | null;
}
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
  /** where drivers live, and whose licence number lies sealed */
  particulars: { personal: true },
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

/** Part of the depot's `Store`. */
export interface HireStores {
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
}
