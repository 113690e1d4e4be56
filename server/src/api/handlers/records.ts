import { checkRecord, type DepotRecord } from "@setfair/records";
import { correctRecord } from "../../desk/correct-record.ts";
import { hireExport } from "../../desk/hire-export.ts";
import { keepToldDefects } from "../../desk/told-defects.ts";
import type { Store } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import { appendRecords } from "./append-records.ts";

export const recordHandlers = {
  async addRecords({ signed, body }) {
    const checked: DepotRecord[] = [];
    for (const [k, sent] of body.records.entries()) {
      const { record, problems } = checkRecord(sent);
      if (record === null)
        throw new Refusal("recordRefused", {
          problems: problems.map(({ path, expected }) => ({ path: `records.${k}.${path}`, expected })),
        });
      await checkRefs(signed.store, record.refs, k);
      checked.push(record);
    }
    const answer = await appendRecords(signed.store, body.records);
    await keepToldDefects(signed.store, checked, signed.account.id);
    return answer;
  },

  async exportRecords({ signed, params }) {
    if ((await signed.store.hires.get(params.id)) === null) throw new Refusal("notFound");
    const { records, receipts, hireId, leftOut } = await hireExport(signed.store, params.id);
    return { hireId, records: [...records], receipts: [...receipts], leftOut };
  },

  async addCorrection({ context, signed, params, body }) {
    const instead = Object.fromEntries(
      Object.entries(body.instead).flatMap(([field, value]) => (value === undefined ? [] : [[field, value]])),
    );
    await correctRecord(
      signed.store,
      params.id,
      { ...body, instead },
      { id: signed.account.id, name: signed.account.name, now: context.now() },
    );
    return { done: true };
  },
} satisfies Partial<Handlers>;

/** What a record refers to must be of this depot. */
async function checkRefs(
  store: Store,
  refs: { readonly hireId?: string | undefined; readonly vehicleId?: string | undefined },
  k: number,
): Promise<void> {
  const hire = refs.hireId === undefined ? null : await store.hires.get(refs.hireId);
  if (refs.hireId !== undefined && hire === null)
    throw badField(`records.${k}.refs.hireId`, "expected a hire of this depot");
  if (refs.vehicleId === undefined) return;
  if ((await store.vehicles.versions(refs.vehicleId)).length === 0)
    throw badField(`records.${k}.refs.vehicleId`, "expected a vehicle of this depot");
  if (hire !== null && hire.vehicleId !== null && hire.vehicleId !== refs.vehicleId) {
    // a vehicle that was changed after the device was filled: what was seen there is kept
    if ((await store.changes.ofHires([hire.id])).length === 0)
      throw badField(`records.${k}.refs.vehicleId`, "expected the vehicle of that hire");
  }
}
