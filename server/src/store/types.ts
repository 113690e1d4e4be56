/**
 * The store as the rest of the server sees it. `openDatabase` gives a {@link Database}; its `storeFor(scope)`
 * is the only way to the rows of a depot, its `system` holds the few things that come before a scope is known
 * (sign-in, set-up, links, jobs). Nothing outside `store/` touches the database.
 *
 * Instants are ISO 8601 UTC with milliseconds (`2026-07-04T09:00:00.000Z`); the store accepts any ISO instant
 * and writes that form. Ids are UUIDv7; a caller may bring its own. An expected "no" is returned
 * (`{ ok: false, why }`), a broken invariant throws. Each area has its own file in `types/`.
 */
import type { Scope } from "./basic-types.ts";
import type { FeedsStore, MessagesStore, VehicleDraftsStore } from "./message-types.ts";
import type { DeskStores } from "./types/desk-types.ts";
import type { ErasureStores } from "./types/erasure-types.ts";
import type { FirmStores } from "./types/firm-types.ts";
import type { HireStores } from "./types/hire-types.ts";
import type { MoneyStores } from "./types/money-types.ts";
import type { RecordStores } from "./types/record-types.ts";
import type { StockStores } from "./types/stock-types.ts";
import type { NewJob, SystemStore } from "./types/system-types.ts";
import type { UpkeepStores } from "./types/upkeep-types.ts";
import type { UseStores } from "./types/use-types.ts";

export type { JsonObject, Page, Paged, Scope } from "./basic-types.ts";
export * from "./types/desk-types.ts";
export type * from "./types/erasure-types.ts";
export type * from "./types/firm-types.ts";
export * from "./types/hire-types.ts";
export * from "./types/money-types.ts";
export type * from "./types/record-types.ts";
export type * from "./types/stock-types.ts";
export type * from "./types/system-types.ts";
export * from "./types/upkeep-types.ts";
export type * from "./types/use-types.ts";

/** Everything of one depot. Inside `within` use only the store that is handed in. */
export interface Store
  extends FirmStores,
    HireStores,
    StockStores,
    UpkeepStores,
    UseStores,
    RecordStores,
    MoneyStores,
    ErasureStores,
    DeskStores {
  readonly scope: Scope;
  /** Runs all or nothing; nested calls join the outer one. A thrown error rolls back. */
  within<T>(work: (store: Store) => Promise<T>): Promise<T>;
  readonly messages: MessagesStore;
  readonly feeds: FeedsStore;
  readonly vehicleDrafts: VehicleDraftsStore;
  readonly jobs: { add(job: NewJob): Promise<{ readonly added: boolean }> };
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
