import { writeAudit } from "./audit-store.ts";
import { toInstantText } from "./codec.ts";
import type { Door } from "./door.ts";
import { rememberErasure } from "./erasures.ts";
import { addJob } from "./jobs-store.ts";
import type { Store } from "./types.ts";

/** Kind of the job that erases what is due (`jobs/handlers.ts`). */
export const ERASE_LICENCES = "eraseLicences";

const boundTo = (door: Door, hireId: string, driverId: string) =>
  JSON.stringify([door.scope.firmId, door.scope.depotId, hireId, driverId]);

async function eraseOne(door: Door, hireId: string, driverId: string): Promise<void> {
  await door
    .change("licence", { sealed: null, erased_at: door.now() })
    .where("hire_id", "=", hireId)
    .where("driver_id", "=", driverId)
    .execute();
  await rememberErasure(door, "licence", JSON.stringify([hireId, driverId]));
}

async function eraseAll(
  door: Door,
  rows: readonly { hire_id: string; driver_id: string }[],
): Promise<number> {
  for (const row of rows) await eraseOne(door, row.hire_id, row.driver_id);
  return rows.length;
}

/** Erases the licence numbers of a hire, whatever their time. */
export async function eraseLicencesOf(door: Door, hireId: string): Promise<number> {
  const rows = await door
    .from("licence")
    .select(["hire_id", "driver_id"])
    .where("hire_id", "=", hireId)
    .where("sealed", "is not", null)
    .execute();
  return eraseAll(door, rows);
}

/** Erases one, as the list of erasures names it. */
export async function eraseLicenceNamed(door: Door, targetId: string): Promise<boolean> {
  const [hireId, driverId] = JSON.parse(targetId) as [string, string];
  const { numUpdatedRows } = await door
    .change("licence", { sealed: null, erased_at: door.now() })
    .where("hire_id", "=", hireId)
    .where("driver_id", "=", driverId)
    .where("sealed", "is not", null)
    .executeTakeFirst();
  return numUpdatedRows > 0n;
}

export function licencesStore(door: Door): Store["licences"] {
  return {
    put: ({ hireId, driverId, number, eraseAt }) =>
      door.within(async (inner) => {
        const at = toInstantText(eraseAt, "eraseAt");
        const sealed = inner.context.sealer.seal(number, boundTo(inner, hireId, driverId));
        const set = { sealed, erase_at: at, erased_at: null };
        await inner
          .insert("licence", { hire_id: hireId, driver_id: driverId, ...set })
          .onConflict((on) => on.columns(["firm_id", "depot_id", "hire_id", "driver_id"]).doUpdateSet(set))
          .execute();
        await addJob(inner, {
          kind: ERASE_LICENCES,
          payload: {},
          runAt: at,
          dedupeKey: `${ERASE_LICENCES}:${at}`,
        });
      }),
    read: (hireId, driverId, by) =>
      door.within(async (inner) => {
        const row = await inner
          .from("licence")
          .select("sealed")
          .where("hire_id", "=", hireId)
          .where("driver_id", "=", driverId)
          .executeTakeFirst();
        if (row === undefined || row.sealed === null) return null;
        await writeAudit(inner, by, "licence.read", hireId, { driverId });
        return inner.context.sealer.open(row.sealed, boundTo(inner, hireId, driverId));
      }),
    erase: (hireId, driverId) =>
      door.within(async (inner) => {
        const row = await inner
          .from("licence")
          .select("sealed")
          .where("hire_id", "=", hireId)
          .where("driver_id", "=", driverId)
          .where("sealed", "is not", null)
          .executeTakeFirst();
        if (row === undefined) return false;
        await eraseOne(inner, hireId, driverId);
        return true;
      }),
    eraseDue: () =>
      door.within(async (inner) => {
        const due = await inner
          .from("licence")
          .select(["hire_id", "driver_id"])
          .where("sealed", "is not", null)
          .where("erase_at", "<=", inner.now())
          .execute();
        return eraseAll(inner, due);
      }),
  };
}
