/** What was used on hires that are over, and the rates that followed. */
import type { JsonObject } from "../basic-types.ts";

/** One hire that is over. Its document is emptied when the hirer is erased; what was found of it names nobody and stays. */
export interface UseReturnRow {
  readonly id: string;
  readonly vehicleId: string;
  /** null: from before these books */
  readonly hireId: string | null;
  readonly returnedAt: string;
  /** party, trip and what was measured */
  readonly document: JsonObject;
  /** null until it has been set beside its forecast */
  readonly outcome: JsonObject | null;
}

export interface UseRateRow {
  /** `*`: a vehicle without rates of its own */
  readonly vehicleId: string;
  readonly document: JsonObject;
  readonly at: string;
}

/** Part of the depot's `Store`. */
export interface UseStores {
  readonly uses: {
    /** Writes what is known of a hire; of the same hire the later replaces the former, and is compared anew. */
    put(row: Omit<UseReturnRow, "id" | "outcome">): Promise<{ readonly id: string }>;
    ofHire(hireId: string): Promise<UseReturnRow | null>;
    /** Oldest return first; without documents, which are large. */
    outcomes(engine: string): Promise<readonly Omit<UseReturnRow, "document">[]>;
    /** Returns that this engine has not set beside their forecasts, oldest first. */
    waiting(engine: string, limit: number): Promise<readonly UseReturnRow[]>;
    setOutcome(id: string, outcome: JsonObject, engine: string): Promise<void>;
    rates(): Promise<readonly UseRateRow[]>;
    /** All rates of the depot at once, all or nothing. */
    putRates(rates: readonly Omit<UseRateRow, "at">[]): Promise<void>;
  };
}
