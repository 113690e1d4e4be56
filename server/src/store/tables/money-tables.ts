/** The ledger and its invoices. */
import type { Scoped } from "./scoped.ts";

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
