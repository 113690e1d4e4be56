import { uuidv7 } from "uuidv7";
import type { Door } from "./door.ts";
import { addJob } from "./jobs-store.ts";
import type { ErasureWishTable } from "./tables.ts";
import type { ErasureWishRow, Store } from "./types.ts";

/** Kind of the job that erases who was asked to be erased and is held by nothing any more. */
export const ERASE_WAITING = "eraseWaiting";

const read = (row: ErasureWishTable): ErasureWishRow => ({
  id: row.id,
  customerId: row.customer_id,
  by: row.asked_by,
  at: row.asked_at,
});

/** Erasures that were asked for and wait. */
export function erasureWishesStore(door: Door): Store["erasureWishes"] {
  const open = (from: Door) => from.from("erasure_wish").selectAll().where("ended_at", "is", null);
  const ofCustomer = async (from: Door, customerId: string) =>
    open(from).where("customer_id", "=", customerId).executeTakeFirst();
  return {
    add: (customerId, by) =>
      door.within(async (inner) => {
        await inner.lock("erasureWishes");
        if ((await ofCustomer(inner, customerId)) !== undefined) return;
        const rest = { ended_at: null, ended_as: null };
        await inner
          .insert("erasure_wish", {
            id: uuidv7(),
            customer_id: customerId,
            asked_by: by,
            asked_at: inner.now(),
            ...rest,
          })
          .execute();
        await addJob(inner, { kind: ERASE_WAITING, payload: {} });
      }),
    async ofCustomer(customerId) {
      const row = await ofCustomer(door, customerId);
      return row === undefined ? null : read(row);
    },
    async waiting() {
      return (await open(door).orderBy("asked_at").orderBy("id").execute()).map(read);
    },
    async end(customerId, as) {
      await door
        .change("erasure_wish", { ended_at: door.now(), ended_as: as })
        .where("customer_id", "=", customerId)
        .where("ended_at", "is", null)
        .execute();
    },
  };
}
