/** Records of what happened at a vehicle, photographs, and what was signed. */

import type { DepotRecord, ErasedRecord, Receipt } from "@setfair/records";
import type { JsonObject } from "../basic-types.ts";

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
/** What a photograph was removed under: a person was erased, or the time was over for which it had to be kept. */
export type RemovedUnder = "erasure" | "retention";
export interface Removed {
  /** instant */
  readonly at: string;
  readonly under: RemovedUnder;
}
export interface PhotographRow {
  /** SHA-256 of the JPEG, hex: its only name */
  readonly sha256: string;
  readonly bytes: number;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly hireId: string | null;
  readonly takenAt: string | null;
  readonly receivedAt: string;
  /** the picture is gone for good; its hash stays in the records */
  readonly removed: Removed | null;
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

/** Part of the depot's `Store`. */
export interface RecordStores {
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
    /** One that was removed stays removed. */
    add(photograph: Omit<PhotographRow, "receivedAt" | "removed">): Promise<PhotographRow>;
    /** Null where it never came. */
    get(sha256: string): Promise<PhotographRow | null>;
    ofHire(hireId: string): Promise<readonly PhotographRow[]>;
    /** Whether it shows a paper of a settlement: a bill, a fine, what shows a loss. */
    isPaper(sha256: string): Promise<boolean>;
    /** Hashes of all that were removed; with `withBytes` of those only whose file may still be there. */
    removed(filter?: { readonly withBytes: boolean }): Promise<readonly string[]>;
    /** The file is gone. */
    bytesGone(sha256: string): Promise<void>;
    /** Removes what is held for hires of erased persons that ended at or before an instant, and erases their records that wait with it. */
    letGo(endedUntil: string): Promise<number>;
  };
  readonly frozen: {
    add(frozen: { hireId: string; room: string; document: JsonObject; by: string }): Promise<FrozenRow>;
    get(id: string): Promise<FrozenRow | null>;
    ofHire(hireId: string): Promise<readonly FrozenRow[]>;
    ofHires(hireIds: readonly string[]): Promise<readonly FrozenRow[]>;
  };
}
