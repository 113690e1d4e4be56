/** Who works at a depot, its versions and settings, and what the server keeps for itself. */
import type { Scoped } from "./scoped.ts";

export interface AccountTable extends Scoped {
  id: string;
  login: string;
  name: string;
  role: string;
  password_hash: string;
  disabled_at: string | null;
  created_at: string;
}

export interface SessionTable extends Scoped {
  token_hash: string;
  account_id: string;
  created_at: string;
  expires_at: string;
}

export interface DepotTable extends Scoped {
  name: string;
  time_zone: string;
  document: string;
  version: number;
}

export interface VersionTable extends Scoped {
  id: string;
  of_id: string;
  valid_from: string;
  /** order of writing within the thing */
  seq: number;
  document: string;
  hash: string;
  created_at: string;
}

/** A depot's own version of a dated rule, a rule read again, or an own version taken back; in the order of writing. */
export interface RuleChangeTable extends Scoped {
  id: string;
  rule_id: string;
  kind: string;
  document: string;
  by_id: string;
  at: string;
}

/** One row per thing that only one transaction at a time may change; writing it is the lock. */
export interface GuardTable extends Scoped {
  name: string;
  counter: number;
}

export interface JobTable extends Scoped {
  id: string;
  kind: string;
  payload: string;
  run_at: string;
  attempts: number;
  state: string;
  locked_until: string | null;
  last_error: string | null;
  dedupe_key: string | null;
  created_at: string;
  finished_at: string | null;
}

export interface AuditTable extends Scoped {
  id: string;
  at: string;
  by_id: string;
  act: string;
  about: string;
  document: string;
}

export interface ErasureTable extends Scoped {
  kind: string;
  target_id: string;
  at: string;
}
