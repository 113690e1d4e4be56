import { sql } from "kysely";
import type { Door } from "./door.ts";
import type { Store, TabletRow } from "./types.ts";

/** What a yard's tablet calls its chains; the hirer's phone and the desk have others. */
const OF_A_TABLET = /^[^.]+\.(out|back|turnaround)$/;

async function seen(door: Door, id: string, by: string): Promise<void> {
  const row = { seen_at: door.now(), seen_by: by };
  await door
    .insert("tablet", { id, ...row })
    .onConflict((on) => on.columns(["firm_id", "depot_id", "id"]).doUpdateSet(row))
    .execute();
}

const KEY = ["firm_id", "depot_id", "tablet_id", "hire_id"] as const;

async function keeps(
  door: Door,
  { id, by, hireIds }: { readonly id: string; readonly by: string; readonly hireIds: readonly string[] },
): Promise<readonly string[]> {
  await seen(door, id, by);
  const ours =
    hireIds.length === 0
      ? []
      : await door
          .from("hire")
          .select(["id", "customer_id"])
          .where("id", "in", [...new Set(hireIds)])
          .execute();
  for (const hire of ours)
    await door
      .insert("tablet_hire", { tablet_id: id, hire_id: hire.id, forgotten_at: null })
      .onConflict((on) => on.columns(KEY).doUpdateSet({ forgotten_at: null }))
      .execute();
  let gone = door
    .change("tablet_hire", { forgotten_at: door.now() })
    .where("tablet_id", "=", id)
    .where("forgotten_at", "is", null);
  if (ours.length > 0)
    gone = gone.where(
      "hire_id",
      "not in",
      ours.map((hire) => hire.id),
    );
  await gone.execute();
  const people = ours.flatMap(({ customer_id }) => (customer_id === null ? [] : [customer_id]));
  if (people.length === 0) return [];
  const erased = await door
    .from("customer")
    .select("id")
    .where("id", "in", people)
    .where("erased_at", "is not", null)
    .execute();
  const isErased = new Set(erased.map((customer) => customer.id));
  return ours.flatMap((hire) => (isErased.has(hire.customer_id ?? "") ? [hire.id] : []));
}

/** Tablets that sent records of these hires, whether they told since what they keep or not. */
async function recordedBy(door: Door, hireIds: readonly string[]): Promise<readonly TabletRow[]> {
  const rows = await door
    .from("record")
    .select(["device_id", "chain"])
    .select(sql<number>`max(receipt_seq)`.as("last"))
    .where("hire_id", "in", [...hireIds])
    .groupBy(["device_id", "chain"])
    .execute();
  const lasts = new Map<string, number>();
  for (const { device_id, chain, last } of rows)
    if (OF_A_TABLET.test(chain)) lasts.set(device_id, Math.max(Number(last), lasts.get(device_id) ?? 0));
  if (lasts.size === 0) return [];
  const receipts = await door
    .from("receipt")
    .select(["seq", "at"])
    .where("seq", "in", [...lasts.values()])
    .execute();
  const at = new Map(receipts.map((receipt) => [Number(receipt.seq), receipt.at]));
  return [...lasts].map(([id, last]) => ({
    id,
    seenAt: at.get(last) ?? "",
    seenBy: null,
    forgottenAt: null,
  }));
}

async function ofHires(door: Door, hireIds: readonly string[]): Promise<readonly TabletRow[]> {
  if (hireIds.length === 0) return [];
  const kept = await door
    .from("tablet_hire")
    .select(["tablet_id", "forgotten_at"])
    .where("hire_id", "in", [...hireIds])
    .execute();
  const known = await door.from("tablet").selectAll().execute();
  const found = new Map<string, TabletRow>();
  for (const { id, seen_at, seen_by } of known) {
    const of = kept.filter(({ tablet_id }) => tablet_id === id).map(({ forgotten_at }) => forgotten_at);
    if (of.length === 0) continue;
    const forgottenAt = of.includes(null) ? null : (of.toSorted().at(-1) ?? null);
    found.set(id, { id, seenAt: seen_at, seenBy: seen_by, forgottenAt });
  }
  for (const tablet of await recordedBy(door, hireIds))
    if (!found.has(tablet.id)) found.set(tablet.id, tablet);
  const rank = ({ forgottenAt, seenAt }: TabletRow) => `${forgottenAt === null ? 0 : 1} ${seenAt}`;
  return [...found.values()].sort((a, b) => (rank(a) < rank(b) ? -1 : 1));
}

/** What tablets keep of hires, by their own word. */
export function tabletsStore(door: Door): Store["tablets"] {
  return {
    keeps: (tablet) => door.within((inner) => keeps(inner, tablet)),
    ofHires: (hireIds) => ofHires(door, hireIds),
  };
}
