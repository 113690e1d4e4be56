import { keepRecords, type LeftOut, type RecordsExport } from "@setfair/records";
import type { Store } from "../store/types.ts";

/**
 * Records and receipts that prove one hire. The receipts are one chain per depot, so a proof goes along it: of what is
 * not of this hire only the place, the time of arrival, the random id and the salted hash are given.
 */
export async function hireExport(
  store: Store,
  hireId: string,
): Promise<RecordsExport & { readonly hireId: string; readonly leftOut: LeftOut }> {
  const all = await store.records.export();
  return { hireId, ...keepRecords(all, ({ refs }) => refs.hireId === hireId) };
}
