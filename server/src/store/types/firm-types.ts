/** The firm, its depot, who signs in, and what is dated: vehicles and terms. */
import type { Role } from "../../auth/roles.ts";
import type { JsonObject, Saved, Scope, StaleVersion } from "../basic-types.ts";

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
  /** The version that was written last, whatever its date; null where there is none. */
  newest(of: string): Promise<DatedVersion | null>;
  /** Holds whoever else writes a version of this thing until the transaction ends. Inside a transaction only. */
  hold(of: string): Promise<void>;
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

/** Part of the depot's `Store`. */
export interface FirmStores {
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
}
