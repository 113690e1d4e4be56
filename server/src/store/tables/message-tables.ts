/** Messages to hirers, and calendars from elsewhere. */
import type { Scoped } from "./scoped.ts";

/** A message to a hirer, as it goes out. */
export interface MessageTable extends Scoped {
  id: string;
  hire_id: string;
  kind: string;
  language: string;
  to_address: string;
  subject: string;
  body: string;
  /** names of papers, JSON */
  attachments: string;
  state: string;
  due_at: string;
  dedupe_key: string;
  by_id: string;
  at: string;
  reason: string | null;
  sent_at: string | null;
  /** what the mail server said when it took it */
  response: string | null;
  attempts: number;
  /** how many jobs were added for it: each has a name of its own */
  job_count: number;
  has_job: number;
}

export interface MessageSettingsTable extends Scoped {
  document: string;
  version: number;
}

/** A secret link to a calendar; only the hash of its token is kept. */
export interface CalendarFeedTable extends Scoped {
  id: string;
  token_hash: string;
  kind: string;
  about: string;
  with_names: number;
  by_id: string;
  at: string;
  revoked_at: string | null;
}

/** Which event of a calendar file became which block, so that the same file again adds nothing. */
export interface CalendarEventTable extends Scoped {
  vehicle_id: string;
  uid: string;
  block_id: string;
  at: string;
}
