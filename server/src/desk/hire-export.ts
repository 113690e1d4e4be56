import { eraseRecord, type RecordsExport } from "@setfair/records";
import type { Store } from "../store/types.ts";

/**
 * Records and receipts that prove one hire. The receipts are one chain per depot, so a proof needs all of it: records
 * of other hires are given as an erasure would leave them, with place and hash and no content.
 */
export async function hireExport(
  store: Store,
  hireId: string,
  now: Date,
): Promise<RecordsExport & { readonly hireId: string }> {
  const all = await store.records.export();
  const withheld = now.toISOString();
  const records = all.records.map((record) =>
    record.refs.hireId === hireId ? record : eraseRecord(record, withheld),
  );
  return { hireId, records, receipts: all.receipts };
}
