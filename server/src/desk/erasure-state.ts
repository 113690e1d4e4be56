import type { z } from "zod";
import { Refusal } from "../api/refusal.ts";
import type { erasureSchema } from "../api/schemas/erasures.ts";
import type { CustomerRow, HireRow, Store, TabletRow } from "../store/types.ts";
import { erasureHolds } from "./erasure-holds.ts";
import { accountNames } from "./names.ts";

export type ErasureState = z.input<typeof erasureSchema>;
type Tablet = ErasureState["tablets"][number];

/** Days without contact after which a tablet is to be looked for. Common practice, no source. */
const UNSEEN_AFTER_DAYS = 14;
const DAY_MS = 86_400_000;

/** The hire and whoever it is of. @throws Refusal where there is no such hire, or nobody of it */
export async function hirerOfHire(
  store: Store,
  hireId: string,
): Promise<{ readonly row: HireRow; readonly customer: CustomerRow }> {
  const row = await store.hires.get(hireId);
  const customer = row?.customerId == null ? null : await store.customers.get(row.customerId);
  if (row === null || customer === null) throw new Refusal("notFound");
  return { row, customer };
}

const tabletAnswer = (row: TabletRow, now: Date, nameOf: (id: string) => string): Tablet => ({
  id: row.id.slice(0, 8),
  by: row.seenBy === null ? null : nameOf(row.seenBy),
  seenAt: row.seenAt,
  unseenDays: Math.max(0, Math.floor((now.getTime() - Date.parse(row.seenAt)) / DAY_MS)),
  forgottenAt: row.forgottenAt,
});

/** The day a month on: by then whoever asked is told what became of it (UK GDPR, Article 12(3); from memory). */
function monthOn(instant: string): string {
  const day = new Date(instant);
  const month = day.getUTCMonth();
  day.setUTCMonth(month + 1);
  // the 31st of a month without one is its last day
  if (day.getUTCMonth() > (month + 1) % 12) day.setUTCDate(0);
  return day.toISOString().slice(0, 10);
}

/** How the erasure of a person stands. */
export async function erasureState(store: Store, customer: CustomerRow, now: Date): Promise<ErasureState> {
  const nameOf = await accountNames(store);
  const hires = await store.hires.all({ customerId: customer.id });
  const tablets = await store.tablets.ofHires(hires.map(({ id }) => id));
  const rest = {
    tablets: tablets.map((row) => tabletAnswer(row, now, nameOf)),
    unseenAfterDays: UNSEEN_AFTER_DAYS,
  };
  if (customer.erasedAt !== null) {
    const { rows } = await store.audit.list({ about: customer.id, limit: 100 });
    const by = rows.find(({ act }) => act === "customer.erase")?.by;
    const done = { at: customer.erasedAt, by: by === undefined ? null : nameOf(by), answerBy: null };
    return { state: "erased", ...done, holds: [], ...rest };
  }
  const holds = (await erasureHolds(store, customer, now)).map((hold) => ({
    ...hold,
    facts: { ...hold.facts },
  }));
  const wish = await store.erasureWishes.ofCustomer(customer.id);
  if (wish === null) return { state: "none", at: null, by: null, answerBy: null, holds, ...rest };
  return { state: "waits", at: wish.at, by: nameOf(wish.by), answerBy: monthOn(wish.at), holds, ...rest };
}
