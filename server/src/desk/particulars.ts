import { addDays } from "@setfair/engine";
import type { Store } from "../store/types.ts";
import type { ParticularsDocument } from "./documents.ts";
import { type HireData, partOf } from "./hire-data.ts";

/**
 * Days after the return for which a licence number is kept: notices come months later (common practice, no source;
 * erased then whatever happens).
 */
const KEPT_DAYS = 180;

export const particularsOf = (data: HireData): ParticularsDocument =>
  partOf(data, "particulars") ?? { drivers: {} };

/** First day on which the licence numbers of this hire are gone, by its end as it stands now. */
export const numbersGoneOn = (data: HireData): string => addDays(data.to.slice(0, 10), KEPT_DAYS);

/** For the papers of a hire: where each driver lives, and the licence number while it is kept. */
export async function driverParticulars(
  store: Store,
  data: HireData,
): Promise<ReadonlyMap<string, { readonly address: string | null; readonly licenceNumber: string | null }>> {
  const found = new Map<string, { address: string | null; licenceNumber: string | null }>();
  for (const [driverId, { address, hasNumber }] of Object.entries(particularsOf(data).drivers)) {
    const licenceNumber = hasNumber ? await store.licences.read(data.row.id, driverId, "system") : null;
    found.set(driverId, { address: address ?? null, licenceNumber });
  }
  return found;
}
