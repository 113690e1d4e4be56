import type { Store } from "../store/types.ts";
import { asDocument } from "./documents.ts";

interface Mended {
  /** the day on which it was repaired */
  readonly on: string;
}
const MARK = "mark:";

/** Record ids of marks of a vehicle that were repaired, with the day: they are no longer there to be known again. */
export async function mendedMarks(store: Store, vehicleId: string): Promise<ReadonlyMap<string, string>> {
  const rows = await store.hires.all({ vehicleId, stages: ["returned", "settled", "closed"] });
  const entries = await store.settlementEntries.ofHires(rows.map(({ id }) => id));
  return new Map(
    entries
      .filter(({ kind, about }) => kind === "mended" && about.startsWith(MARK))
      .map(({ about, document }) => [about.slice(MARK.length), asDocument<Mended>(document).on ?? ""]),
  );
}
