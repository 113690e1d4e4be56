import { Refusal } from "../api/refusal.ts";
import type { Store } from "../store/types.ts";
import { settlementOf } from "./after-hire.ts";
import { toJson } from "./documents.ts";
import { partOf, readHireData } from "./hire-data.ts";
import { disputedCharges, entriesOfHire, promisedOn } from "./settlement-entries.ts";

/**
 * Writes down how a shown settlement stands after an answer, a cost or a charge taken back, so that money, lists and
 * reminders go by it. What was frozen stays as it was shown.
 */
export async function keepStanding(store: Store, hireId: string, now: Date, by: string): Promise<void> {
  const data = await readHireData(store, hireId, now);
  const kept = partOf(data, "settlement");
  if (kept === null || kept.frozenAt === null) return;
  const { result } = await settlementOf(store, data);
  const entries = await entriesOfHire(store, data);
  const document = {
    ...kept,
    standing: result,
    promisedOn: promisedOn(entries),
    disputedCharges: disputedCharges(entries),
  };
  const version = data.parts.settlement?.version ?? 0;
  const put = await store.hires.putPart(hireId, "settlement", toJson(document), version, by);
  if (!put.ok) throw new Refusal("stale");
}
