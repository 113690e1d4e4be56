/** What comes before a scope is known: sign-in, set-up, links, jobs. */
import type { JsonObject, Scope } from "../basic-types.ts";
import type { FeedAnswer } from "../message-types.ts";
import type { AccountRow, AccountSecret, DepotRow } from "./firm-types.ts";

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
  readonly kind: "record" | "customer" | "licence" | "photograph";
  /** id; of a licence number and of a photograph JSON: [hire, driver], [hash, removed under] */
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
