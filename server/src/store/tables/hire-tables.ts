/** A hire, its hirer, and what was said and decided about it. */
import type { Scoped } from "./scoped.ts";

export interface CustomerTable extends Scoped {
  id: string;
  name: string;
  document: string;
  version: number;
  erased_at: string | null;
  created_at: string;
}

export interface WordTable extends Scoped {
  word: string;
  target_id: string;
}

export interface HireTable extends Scoped {
  id: string;
  number: string;
  stage: string;
  customer_id: string | null;
  customer_name: string;
  vehicle_id: string | null;
  registration: string;
  from_at: string;
  to_at: string;
  version: number;
  created_at: string;
  updated_at: string;
}

export interface HirePartTable extends Scoped {
  hire_id: string;
  name: string;
  document: string;
  version: number;
  updated_at: string;
  updated_by: string;
}

export interface BookingTable extends Scoped {
  hire_id: string;
  vehicle_id: string;
  from_at: string;
  to_at: string;
  /** to_at and the turnaround: until then the vehicle is taken */
  ready_at: string;
  turnaround_minutes: number;
}

export interface HirerLinkTable extends Scoped {
  id: string;
  token_hash: string;
  hire_id: string;
  expires_at: string;
  revoked_at: string | null;
  created_at: string;
}

export interface LicenceTable extends Scoped {
  hire_id: string;
  driver_id: string;
  /** nonce, tag and cipher text; null once erased */
  sealed: string | null;
  erase_at: string;
  erased_at: string | null;
}

export interface OverrideTable extends Scoped {
  id: string;
  hire_id: string;
  finding_code: string;
  about: string;
  basis: string;
  reason: string;
  by_id: string;
  at: string;
}

export interface FrozenTable extends Scoped {
  id: string;
  hire_id: string;
  room: string;
  document: string;
  hash: string;
  by_id: string;
  at: string;
}

export interface NoteTable extends Scoped {
  id: string;
  hire_id: string;
  kind: string;
  body: string;
  due_at: string | null;
  done_at: string | null;
  by_id: string;
  at: string;
  owner: string | null;
  moment: string | null;
  done_by: string | null;
}

/** What changed about a hire after it was booked. */
export interface HireChangeTable extends Scoped {
  id: string;
  hire_id: string;
  kind: string;
  document: string;
  by_id: string;
  at: string;
}

/** Said and paid about a settlement, appended only. */
export interface SettlementEntryTable extends Scoped {
  id: string;
  hire_id: string;
  kind: string;
  about: string;
  document: string;
  by_id: string;
  at: string;
}
