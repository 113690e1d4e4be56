/** Tablets and what they keep, and erasures that wait. Ids only. */
import type { Scoped } from "./scoped.ts";

export interface TabletTable extends Scoped {
  id: string;
  seen_at: string;
  seen_by: string;
}
export interface TabletHireTable extends Scoped {
  tablet_id: string;
  hire_id: string;
  /** null while it keeps something of the hire */
  forgotten_at: string | null;
}
export interface ErasureWishTable extends Scoped {
  id: string;
  customer_id: string;
  asked_by: string;
  asked_at: string;
  ended_at: string | null;
  ended_as: string | null;
}
