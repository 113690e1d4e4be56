import { erasureHolds } from "../desk/erasure-holds.ts";
import { ERASE_WAITING } from "../store/erasure-wishes-store.ts";
import type { JobHandler } from "./handlers.ts";

/**
 * Erases whoever was asked to be erased and is held by nothing any more; looks again each day while somebody waits.
 * Doing it twice comes to the same.
 */
export function waitingEraser(context: { readonly now: () => Date }): JobHandler {
  return async (_job, store, isStopping) => {
    const now = context.now();
    const waiting = await store.erasureWishes.waiting();
    if (waiting.length > 0) {
      const runAt = new Date(now.getTime() + 86_400_000).toISOString();
      const dedupeKey = `${ERASE_WAITING}:${runAt.slice(0, 10)}`;
      await store.jobs.add({ kind: ERASE_WAITING, payload: {}, runAt, dedupeKey });
    }
    for (const { customerId, by } of waiting) {
      if (isStopping()) return;
      await store.within(async (inner) => {
        const customer = await inner.customers.get(customerId);
        const wish = await inner.erasureWishes.ofCustomer(customerId);
        if (customer === null || wish === null) return;
        const holds = await erasureHolds(inner, customer, now);
        if (holds.length === 0) await inner.customers.erase(customerId, by);
      });
    }
  };
}
