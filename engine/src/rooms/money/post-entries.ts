import type { IsoDate } from "../../base/time.ts";
import { undoes } from "./read-ledger.ts";
import type { Account, InvoiceLine, LedgerEntry, Posting, Route } from "./types.ts";

const BY_ROUTE: Readonly<Record<Route, Account>> = {
  card: "card",
  cardHold: "card",
  transfer: "bank",
  cash: "cash",
  asHeld: "card",
};

type Side = readonly [Account, number];

/** The two sides of an entry; none where no money moves, as for a hold on a card. */
function sidesOf(entry: LedgerEntry, entries: readonly LedgerEntry[]): readonly Side[] {
  const pair = (debit: Account, credit: Account): readonly Side[] => [
    [debit, entry.pence],
    [credit, -entry.pence],
  ];
  const origin = originOf(entry, entries);
  const route = BY_ROUTE[originRoute(entry, origin, entries)];
  const isHold = (origin ?? entry).route === "cardHold";
  switch (entry.kind) {
    case "payment":
      return pair(route, "hirers");
    case "refund":
      return pair("hirers", route);
    case "depositHeld":
      return entry.route === "cardHold" ? [] : pair(route, "deposits");
    case "depositReleased":
      return isHold ? [] : pair("deposits", route);
    case "depositCharged":
      return isHold ? pair("card", "hirers") : pair("deposits", "hirers");
    default:
      return [];
  }
}

/** What an entry rests on: what it names; older rows name nothing and rest on the first deposit. */
function originOf(entry: LedgerEntry, entries: readonly LedgerEntry[]): LedgerEntry | undefined {
  if (entry.kind === "depositHeld" || entry.kind === "payment") return undefined;
  const named = entries.find(({ id }) => id === entry.of);
  if (named !== undefined || entry.kind === "refund") return named;
  return entries.find(({ kind }) => kind === "depositHeld");
}

/** The way by which it goes: that of what it rests on; of a part kept from a deposit, that of the deposit. */
function originRoute(
  entry: LedgerEntry,
  origin: LedgerEntry | undefined,
  entries: readonly LedgerEntry[],
): Route {
  if (origin?.kind === "depositCharged") return originRoute(origin, originOf(origin, entries), entries);
  return origin?.route ?? entry.route ?? "card";
}

/**
 * The entries of a hire as double entry, whole pence: for each, debits and credits that sum to nothing. What was
 * undone is posted again the other way round, on the day on which it was undone. Charges and credits are posted
 * by their invoice.
 */
export function postEntries(entries: readonly LedgerEntry[]): readonly Posting[] {
  return entries.flatMap((entry) => {
    const target = undoes(entry) ? entries.find(({ id }) => id === entry.of) : undefined;
    const sides = target === undefined ? sidesOf(entry, entries) : sidesOf(target, entries);
    const sign = target === undefined ? 1 : -1;
    return sides.map(([account, pence]) => ({ of: entry.id, on: entry.on, account, pence: sign * pence }));
  });
}

/** An invoice or credit note as double entry: the hirer owes it, by kind of sale, and its VAT. */
export function postInvoice(of: string, on: IsoDate, lines: readonly InvoiceLine[]): readonly Posting[] {
  return lines.flatMap(({ vat, netPence, vatPence, grossPence }) =>
    (
      [
        ["hirers", grossPence],
        [`sales.${vat}`, -netPence],
        ["vat", -vatPence],
      ] as const
    )
      .filter(([, pence]) => pence !== 0)
      .map(([account, pence]) => ({ of, on, account, pence })),
  );
}
