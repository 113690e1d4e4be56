/** What happened at a vehicle, appended only. */
import type { Scoped } from "./scoped.ts";

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
  /** names a person who was erased, and says how the vehicle was: instant of the return from which its time counts */
  held_from: string | null;
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
  /** of a hire whose hirer was erased: instant of the return from which its time counts */
  held_from: string | null;
  removed_at: string | null;
  removed_under: string | null;
  /** the bytes are gone too, wherever they lay */
  bytes_gone_at: string | null;
}
