import { readLedger } from "./read-ledger.ts";
import type { LedgerEntry, NewEntry, Route } from "./types.ts";

interface Origin {
  readonly id: string;
  readonly route: Route;
  readonly left: number;
}

/** What an entry may be taken from, in the order of the ledger. */
function originsOf(entries: readonly LedgerEntry[], entry: NewEntry): readonly Origin[] | null {
  const { income, holdings } = readLedger(entries);
  if (entry.kind === "refund")
    return income
      .filter(({ route }) => entry.route === "asHeld" || route === entry.route)
      .map(({ id, route, refundable }) => ({ id, route, left: refundable }));
  if (entry.kind === "depositCharged" || entry.kind === "depositReleased")
    return holdings.map(({ id, route, remaining }) => ({ id, route, left: remaining }));
  return null;
}

/**
 * The entry in parts that each name what they rest on, with ids `id`, `id.2`, `id.3` …; the entry itself where it
 * names it already or rests on nothing. The parts come to less than the entry where there is not enough:
 * `checkEntry` says so beforehand. Holds that have `lapsed` are not charged.
 */
export function nameOrigins(
  entries: readonly LedgerEntry[],
  entry: NewEntry,
  lapsed: readonly string[] = [],
): readonly NewEntry[] {
  const found = entry.of === null ? originsOf(entries, entry) : null;
  const origins = found?.filter(({ id }) => entry.kind !== "depositCharged" || !lapsed.includes(id)) ?? null;
  if (origins === null) return [entry];
  const parts: NewEntry[] = [];
  let left = entry.pence;
  for (const origin of origins) {
    const pence = Math.min(left, origin.left);
    if (pence <= 0) continue;
    const id = parts.length === 0 ? entry.id : `${entry.id}.${parts.length + 1}`;
    parts.push({ ...entry, id, pence, of: origin.id, route: origin.route });
    left -= pence;
  }
  return parts;
}
