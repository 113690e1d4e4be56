/**
 * The tables as Kysely sees them. The same on SQLite and PostgreSQL: text, integers and nothing else.
 * JSON documents are text on both, so that what was written is read again to the letter; everything that is
 * filtered by has a column of its own. Instants are ISO 8601 UTC text with milliseconds. Each area has its own file in
 * `tables/`.
 */
import type { ErasureWishTable, TabletHireTable, TabletTable } from "./tables/erasure-tables.ts";
import type {
  AccountTable,
  AuditTable,
  DepotTable,
  ErasureTable,
  GuardTable,
  JobTable,
  RuleChangeTable,
  SessionTable,
  VersionTable,
} from "./tables/firm-tables.ts";
import type {
  BookingTable,
  CustomerTable,
  FrozenTable,
  HireChangeTable,
  HirePartTable,
  HirerLinkTable,
  HireTable,
  LicenceTable,
  NoteTable,
  OverrideTable,
  SettlementEntryTable,
  WordTable,
} from "./tables/hire-tables.ts";
import type {
  CalendarEventTable,
  CalendarFeedTable,
  MessageSettingsTable,
  MessageTable,
} from "./tables/message-tables.ts";
import type { InvoiceTable, PaymentTable } from "./tables/money-tables.ts";
import type { PhotographTable, ReceiptTable, RecordTable } from "./tables/record-tables.ts";
import type { StockEventTable, StockHoldTable, StockItemTable } from "./tables/stock-tables.ts";
import type {
  DefectDisclosureTable,
  DefectTable,
  UpkeepEntryTable,
  UseRateTable,
  UseReturnTable,
  VehicleBlockTable,
  VehicleDraftTable,
  WeighbridgeTicketTable,
} from "./tables/vehicle-tables.ts";

export type * from "./tables/erasure-tables.ts";
export type * from "./tables/firm-tables.ts";
export type * from "./tables/hire-tables.ts";
export type * from "./tables/message-tables.ts";
export type * from "./tables/money-tables.ts";
export type * from "./tables/record-tables.ts";
export type { Scoped } from "./tables/scoped.ts";
export type * from "./tables/stock-tables.ts";
export type * from "./tables/vehicle-tables.ts";

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
  erasure_wish: ErasureWishTable;
  tablet: TabletTable;
  tablet_hire: TabletHireTable;
  stock_item: StockItemTable;
  stock_hold: StockHoldTable;
  stock_event: StockEventTable;
}

/** A firm stands above its depots; a set-up link comes before there is a firm. */
export interface Tables extends ScopedTables {
  /** one row per thing that runs through the firm; writing it is the lock */
  firm_counter: { firm_id: string; name: string; counter: number };
  firm: { firm_id: string; name: string; document: string; created_at: string };
  setup_link: { token_hash: string; created_at: string; expires_at: string; used_at: string | null };
}
