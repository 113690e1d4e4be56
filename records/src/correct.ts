import type { JsonObject } from "./json.ts";
import type { AnyRecord, DepotRecord } from "./record.ts";
import { isErased } from "./record.ts";

/** One record with what holds of it now, and the corrections that made it so, oldest first. */
export interface CorrectedRecord {
  /** as it came, never changed */
  readonly record: DepotRecord;
  /** what holds now */
  readonly content: JsonObject;
  readonly corrections: readonly DepotRecord[];
}

/**
 * Reads records with what was put right later. Records are taken in the order given, so that of two corrections of
 * one record the later holds. A correction of a record that is not here, or that held something else, changes nothing.
 */
export function withCorrections(records: readonly AnyRecord[]): readonly CorrectedRecord[] {
  const whole = records.filter((record): record is DepotRecord => !isErased(record));
  const of = new Map<string, DepotRecord[]>();
  for (const record of whole) {
    if (record.kind !== "correction") continue;
    const { id, hash } = record.content.to as { readonly id: string; readonly hash: string };
    of.set(`${id} ${hash}`, [...(of.get(`${id} ${hash}`) ?? []), record]);
  }
  return whole
    .filter(({ kind }) => kind !== "correction")
    .map((record) => {
      const corrections = of.get(`${record.id} ${record.hash}`) ?? [];
      const instead = corrections.map(({ content }) => content.instead as JsonObject);
      return { record, content: Object.assign({}, record.content, ...instead) as JsonObject, corrections };
    });
}
