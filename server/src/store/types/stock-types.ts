/** What travels with hires and comes back. */
import type { JsonObject } from "../basic-types.ts";

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

/** Part of the depot's `Store`. */
export interface StockStores {
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
}
