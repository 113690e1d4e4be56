import { checkEntry, type LedgerEntry, type NewEntry, nameOrigins } from "@setfair/engine";
import type { Signed } from "../api/call.ts";
import { badField, Refusal } from "../api/refusal.ts";
import type { AppContext } from "../context.ts";
import { toJson } from "../desk/documents.ts";
import { type HireData, readHireData } from "../desk/hire-data.ts";
import { requireStage } from "../desk/require-stage.ts";
import type { HireStage, JsonObject, Store } from "../store/types.ts";
import { entriesOf, lapsedHolds } from "./hire-money.ts";

/** A hire whose ledger nobody else changes until the transaction ends. */
export interface OpenMoney {
  readonly store: Store;
  readonly data: HireData;
  readonly by: string;
}

interface MoneyCall {
  readonly context: AppContext;
  readonly signed: Signed;
  readonly params: { readonly id: string };
}

/** Reads a hire with its ledger locked, changes it in one transaction. */
export async function changeMoney<T>(
  { context, signed, params }: MoneyCall,
  stages: readonly HireStage[],
  work: (open: OpenMoney) => Promise<T>,
): Promise<T> {
  return signed.store.within(async (store) => {
    await store.payments.lock(params.id);
    const data = await readHireData(store, params.id, context.now());
    if (stages.length > 0) requireStage(data, ...stages);
    return work({ store, data, by: signed.account.id });
  });
}

/** Refuses an entry that does not fit, with the field; gives the holds that have lapsed. */
export function refuseEntry(
  { data }: Pick<OpenMoney, "data">,
  entries: readonly LedgerEntry[],
  entry: NewEntry,
): readonly string[] {
  if (entry.on > data.today) throw badField("on", "expected a day that is not ahead");
  const lapsed = lapsedHolds(data);
  const problems = checkEntry(entries, entry, lapsed);
  if (problems.length > 0) throw new Refusal("badInput", { problems });
  return lapsed;
}

/** Writes an entry, in parts that each name what they rest on. Refused with the field that does not fit. */
export async function addEntry(open: OpenMoney, entry: NewEntry, more: JsonObject = {}): Promise<void> {
  const { store, data, by } = open;
  const entries = entriesOf(await store.payments.ofHire(data.row.id));
  const lapsed = refuseEntry(open, entries, entry);
  for (const part of nameOrigins(entries, entry, lapsed)) {
    const { id, kind, pence, on, of, route, line, note } = part;
    const said = { on, method: route, line, note };
    const given = Object.fromEntries(Object.entries(said).filter(([, value]) => value !== null));
    const added = await store.payments.add({
      id,
      hireId: data.row.id,
      kind,
      currency: "GBP",
      pence,
      of,
      document: toJson({ ...given, ...more }),
      by,
    });
    if (added.hireId !== data.row.id) throw badField("id", "expected a new id: this one is another payment");
  }
}

/**
 * Whether this very entry is there already, so that sending twice records once; refused where the id stands for
 * another. Parts `id.2`, `id.3` … belong to it.
 */
export function isThere(
  entries: readonly LedgerEntry[],
  entry: Pick<NewEntry, "id" | "kind" | "pence">,
): boolean {
  const parts = entries.filter(({ id }) => id === entry.id || id.startsWith(`${entry.id}.`));
  if (!parts.some(({ id }) => id === entry.id)) return false;
  const pence = parts.reduce((sum, part) => sum + part.pence, 0);
  if (parts[0]?.kind !== entry.kind || pence !== entry.pence)
    throw badField("id", "expected a new id: this one is another payment");
  return true;
}
