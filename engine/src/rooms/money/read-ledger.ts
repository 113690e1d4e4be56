import type { Holding, Income, Ledger, LedgerEntry, Route } from "./types.ts";

/** Entries that undo another: money that did not arrive, and what was keyed in wrongly. */
export const undoes = ({ kind }: Pick<LedgerEntry, "kind">): boolean =>
  kind === "failed" || kind === "correction";

/** What was undone, by which entry; an entry is undone at most once. */
function undoneBy(entries: readonly LedgerEntry[]): Record<string, string> {
  const known = new Set(entries.map(({ id }) => id));
  const undone: Record<string, string> = {};
  for (const { id, kind, of } of entries) {
    if (undoes({ kind }) && of !== null && known.has(of) && undone[of] === undefined) undone[of] = id;
  }
  return undone;
}

interface Taken {
  [id: string]: number;
}

/** Takes an amount from those that it names, else from the first that still have some. What finds no place is left out: older rows may name nothing. */
function take<From extends { readonly id: string; readonly pence: number; readonly route: Route }>(
  from: readonly From[],
  taken: Taken,
  entry: LedgerEntry,
): void {
  let left = entry.pence;
  const named = from.filter(({ id }) => id === entry.of);
  const byRoute = from.filter(({ route }) => route === entry.route);
  for (const each of [...named, ...byRoute, ...from]) {
    const free = each.pence - (taken[each.id] ?? 0);
    const part = Math.min(left, Math.max(0, free));
    if (part > 0) taken[each.id] = (taken[each.id] ?? 0) + part;
    left -= part;
  }
}

function holdingsOf(live: readonly LedgerEntry[]): Holding[] {
  const held = live
    .filter(({ kind }) => kind === "depositHeld")
    .map(({ id, pence, on, route }) => ({ id, pence, on, route: route ?? "card" }));
  const charged: Taken = {};
  const released: Taken = {};
  const both: Taken = {};
  for (const entry of live) {
    if (entry.kind !== "depositCharged" && entry.kind !== "depositReleased") continue;
    const before = { ...both };
    take(held, both, entry);
    const into = entry.kind === "depositCharged" ? charged : released;
    for (const { id } of held) into[id] = (into[id] ?? 0) + (both[id] ?? 0) - (before[id] ?? 0);
  }
  return held.map((each) => ({
    ...each,
    isHold: each.route === "cardHold",
    charged: charged[each.id] ?? 0,
    released: released[each.id] ?? 0,
    remaining: each.pence - (both[each.id] ?? 0),
  }));
}

/** By which way money that was charged to a deposit came in: that of the deposit. */
function routeOfCharge(entry: LedgerEntry, live: readonly LedgerEntry[]): Route {
  const held = live.find(({ id, kind }) => id === entry.of && kind === "depositHeld");
  const route = held?.route ?? live.find(({ kind }) => kind === "depositHeld")?.route ?? "card";
  return route === "cardHold" ? "card" : route;
}

function incomeOf(live: readonly LedgerEntry[]): Income[] {
  const came = live.flatMap((entry) => {
    const { id, kind, pence, on, route } = entry;
    if (kind === "payment") return [{ id, pence, on, route: route ?? "card", fromDeposit: false }];
    if (kind === "depositCharged")
      return [{ id, pence, on, route: routeOfCharge(entry, live), fromDeposit: true }];
    return [];
  });
  const back: Taken = {};
  for (const entry of live) if (entry.kind === "refund") take(came, back, entry);
  return came.map((each) => {
    const refunded = back[each.id] ?? 0;
    return { ...each, refunded, refundable: each.pence - refunded };
  });
}

const sumOf = (entries: readonly LedgerEntry[], ...kinds: readonly LedgerEntry["kind"][]): number =>
  entries.filter(({ kind }) => kinds.includes(kind)).reduce((sum, { pence }) => sum + pence, 0);

/**
 * What the entries of a hire come to, in whole pence. Entries that were undone count for nothing. Releases and
 * charges of a deposit that name no holding, as older rows do, go to the holdings in the order of the entries.
 */
export function readLedger(entries: readonly LedgerEntry[]): Ledger {
  const undone = undoneBy(entries);
  const live = entries.filter((entry) => !undoes(entry) && undone[entry.id] === undefined);
  const holdings = holdingsOf(live);
  const remaining = (isHold: boolean) =>
    holdings.filter((each) => each.isHold === isHold).reduce((sum, each) => sum + each.remaining, 0);
  const inMoney = holdings.filter(({ isHold }) => !isHold);
  const onCards = holdings.filter(({ isHold }) => isHold);
  const total = (of: readonly Holding[], what: "pence" | "charged" | "released") =>
    of.reduce((sum, each) => sum + each[what], 0);
  const paid = sumOf(live, "payment");
  const refunded = sumOf(live, "refund");
  return {
    paid,
    refunded,
    charged: sumOf(live, "charge") - sumOf(live, "credit"),
    fromDeposit: total(holdings, "charged"),
    income: incomeOf(live),
    holdings,
    heldMoney: remaining(false),
    heldOnCards: remaining(true),
    cashIn: paid + total(inMoney, "pence") + total(onCards, "charged"),
    cashOut: refunded + total(inMoney, "released"),
    undone,
  };
}
