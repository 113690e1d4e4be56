/**
 * The tables as Kysely sees them. The same on SQLite and PostgreSQL: text, integers and nothing else.
 * JSON documents are text on both, so that what was written is read again to the letter; everything that is
 * filtered by has a column of its own. Instants are ISO 8601 UTC text with milliseconds.
 */
export interface Scoped {
  firm_id: string;
  depot_id: string;
}

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
/** A vehicle that cannot be hired for a while, without a hire: MOT, workshop, laid up. */
export interface VehicleBlockTable extends Scoped {
  id: string;
  vehicle_id: string;
  kind: string;
  note: string;
  from_at: string;
  to_at: string;
  by_id: string;
  at: string;
}
/** A vehicle weighed by axle, with what was aboard. */
export interface WeighbridgeTicketTable extends Scoped {
  id: string;
  vehicle_id: string;
  weighed_on: string;
  document: string;
  by_id: string;
  at: string;
  withdrawn_at: string | null;
}
/** One row per thing that only one transaction at a time may change; writing it is the lock. */
export interface GuardTable extends Scoped {
  name: string;
  counter: number;
}
export interface RecordTable extends Scoped {
  id: string;
  hash: string;
  device_id: string;
  chain: string;
  seq: number;
  kind: string;
  hire_id: string | null;
  vehicle_id: string | null;
  person_id: string | null;
  receipt_seq: number;
  /** the whole record as JSON, without salt and content once erased */
  body: string;
  erased_at: string | null;
}
export interface ReceiptTable extends Scoped {
  seq: number;
  record_id: string;
  record_hash: string;
  prev: string | null;
  at: string;
  hash: string;
}
export interface PhotographTable extends Scoped {
  sha256: string;
  bytes: number;
  width_px: number;
  height_px: number;
  hire_id: string | null;
  taken_at: string | null;
  received_at: string;
}
export interface PaymentTable extends Scoped {
  id: string;
  hire_id: string;
  kind: string;
  currency: string;
  pence: number;
  document: string;
  by_id: string;
  at: string;
  /** the day on which it happened; null only while the migration runs */
  on_day: string | null;
  /** the entry that it pays back, releases, charges or undoes */
  of_id: string | null;
}
export interface InvoiceTable extends Scoped {
  id: string;
  hire_id: string;
  series: string;
  /** runs through the firm without a hole, by series */
  number: number;
  on_day: string;
  of_id: string | null;
  document: string;
  by_id: string;
  at: string;
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
/** A depot's own version of a dated rule, a rule read again, or an own version taken back; in the order of writing. */
export interface RuleChangeTable extends Scoped {
  id: string;
  rule_id: string;
  kind: string;
  document: string;
  by_id: string;
  at: string;
}
export interface HirerLinkTable extends Scoped {
  id: string;
  token_hash: string;
  hire_id: string;
  expires_at: string;
  revoked_at: string | null;
  created_at: string;
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
export interface LicenceTable extends Scoped {
  hire_id: string;
  driver_id: string;
  /** nonce, tag and cipher text; null once erased */
  sealed: string | null;
  erase_at: string;
  erased_at: string | null;
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
export interface DepotTable extends Scoped {
  name: string;
  time_zone: string;
  document: string;
  version: number;
}

/** Something done to a vehicle or read off it on a day. */
export interface UpkeepEntryTable extends Scoped {
  id: string;
  vehicle_id: string;
  kind: string;
  on_day: string;
  document: string;
  by_id: string;
  at: string;
}
export interface DefectTable extends Scoped {
  id: string;
  vehicle_id: string;
  hire_id: string | null;
  class: string;
  document: string;
  by_id: string;
  at: string;
  closed_at: string | null;
  closed_by: string | null;
  closed_how: string | null;
}
export interface DefectDisclosureTable extends Scoped {
  id: string;
  defect_id: string;
  hire_id: string;
  signer: string;
  by_id: string;
  at: string;
}

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
/** A vehicle that is only listed: it is described before it can be hired. */
export interface VehicleDraftTable extends Scoped {
  id: string;
  registration: string;
  document: string;
  by_id: string;
  at: string;
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

/** A numbered thing, or a lot of like things, that travels with hires. */
export interface StockItemTable extends Scoped {
  id: string;
  kind: string;
  name: string;
  size: string | null;
  count: number;
  expires_on: string | null;
  retired_on: string | null;
  document: string;
  version: number;
}
/** Which hire has how many of it, half open; `item_id` may be a lot that only the terms count (`terms:<extra>`). */
export interface StockHoldTable extends Scoped {
  id: string;
  item_id: string;
  hire_id: string;
  count: number;
  from_at: string;
  to_at: string;
  packed_at: string | null;
}
export interface StockEventTable extends Scoped {
  id: string;
  item_id: string;
  act: string;
  document: string;
  by_id: string;
  at: string;
}

/** Every table of a depot; all carry firm_id and depot_id and are reached through the door only. */
export interface ScopedTables {
  depot: DepotTable;
  account: AccountTable;
  session: SessionTable;
  vehicle_version: VersionTable;
  terms_version: VersionTable;
  customer: CustomerTable;
  customer_word: WordTable;
  hire: HireTable;
  hire_word: WordTable;
  hire_part: HirePartTable;
  booking: BookingTable;
  vehicle_block: VehicleBlockTable;
  upkeep_entry: UpkeepEntryTable;
  defect: DefectTable;
  defect_disclosure: DefectDisclosureTable;
  weighbridge_ticket: WeighbridgeTicketTable;
  guard: GuardTable;
  message: MessageTable;
  message_settings: MessageSettingsTable;
  calendar_feed: CalendarFeedTable;
  calendar_event: CalendarEventTable;
  vehicle_draft: VehicleDraftTable;
  record: RecordTable;
  receipt: ReceiptTable;
  photograph: PhotographTable;
  payment: PaymentTable;
  invoice: InvoiceTable;
  finding_override: OverrideTable;
  hire_change: HireChangeTable;
  settlement_entry: SettlementEntryTable;
  use_return: UseReturnTable;
  use_rate: UseRateTable;
  note: NoteTable;
  rule_change: RuleChangeTable;
  hirer_link: HirerLinkTable;
  frozen: FrozenTable;
  licence: LicenceTable;
  job: JobTable;
  audit: AuditTable;
  erasure: ErasureTable;
  stock_item: StockItemTable;
  stock_hold: StockHoldTable;
  stock_event: StockEventTable;
}

/** What was used on a hire that is over. */
export interface UseReturnTable extends Scoped {
  id: string;
  vehicle_id: string;
  hire_id: string | null;
  returned_at: string;
  document: string;
  outcome: string | null;
  engine: string | null;
}

/** Rates learnt for a vehicle. */
interface UseRateTable extends Scoped {
  vehicle_id: string;
  document: string;
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

/** A firm stands above its depots; a set-up link comes before there is a firm. */
export interface Tables extends ScopedTables {
  /** one row per thing that runs through the firm; writing it is the lock */
  firm_counter: { firm_id: string; name: string; counter: number };
  firm: { firm_id: string; name: string; document: string; created_at: string };
  setup_link: { token_hash: string; created_at: string; expires_at: string; used_at: string | null };
}
