/** Things that travel. */
import type { Scoped } from "./scoped.ts";

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
