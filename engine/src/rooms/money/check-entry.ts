import type { InputProblem } from "../../base/bad-input.ts";
import { readLedger, undoes } from "./read-ledger.ts";
import type { Holding, LedgerEntry, NewEntry } from "./types.ts";

const problem = (path: string, expected: string): readonly InputProblem[] => [{ path, expected }];

/**
 * Whether an entry may be added to these: the problems, each with its field; none where it may. No refund
 * above what came by its route, no release or charge above what is held, nothing undone twice. `lapsed`: ids of
 * holds on cards whose days are over, which can be charged no more.
 */
export function checkEntry(
  entries: readonly LedgerEntry[],
  entry: NewEntry,
  lapsed: readonly string[] = [],
): readonly InputProblem[] {
  if (!Number.isSafeInteger(entry.pence) || entry.pence < 1)
    return problem("pence", "expected whole pence, more than 0");
  if (entries.some(({ id }) => id === entry.id))
    return problem("id", "expected a new id: this one is another entry");
  switch (entry.kind) {
    case "payment":
      return entry.route === "cardHold" || entry.route === "asHeld" || entry.route === null
        ? problem("method", "expected card, transfer or cash: a hold on a card is no payment")
        : [];
    case "refund":
      return checkRefund(entries, entry);
    case "depositCharged":
    case "depositReleased":
      return checkDeposit(entries, entry, lapsed);
    case "failed":
    case "correction":
      return checkUndo(entries, entry);
    case "charge":
    case "credit":
      return entry.line === null ? problem("line", "expected a kind of line, which decides the VAT") : [];
    case "depositHeld":
      return entry.route === null || entry.route === "asHeld"
        ? problem("method", "expected card, transfer, cash or cardHold")
        : [];
  }
}

/** By the original route, and never more than came that way. */
function checkRefund(entries: readonly LedgerEntry[], entry: NewEntry): readonly InputProblem[] {
  const { income } = readLedger(entries);
  if (entry.of !== null) {
    const came = income.find(({ id }) => id === entry.of);
    if (came === undefined) return problem("of", "expected a payment of this hire that stands");
    if (entry.route !== null && entry.route !== came.route && entry.route !== "asHeld")
      return problem("method", `expected ${came.route}, the way by which it came`);
    return entry.pence > came.refundable
      ? problem("pence", `expected at most what is left of that payment, ${came.refundable}`)
      : [];
  }
  const most = income
    .filter(({ route }) => route === entry.route)
    .reduce((sum, { refundable }) => sum + refundable, 0);
  return entry.pence > most ? problem("pence", `expected at most what came by this way, ${most}`) : [];
}

function checkDeposit(
  entries: readonly LedgerEntry[],
  entry: NewEntry,
  lapsed: readonly string[],
): readonly InputProblem[] {
  const { holdings } = readLedger(entries);
  if (entry.kind === "depositCharged" && entry.of !== null && lapsed.includes(entry.of))
    return problem("of", "expected a hold that has not lapsed");
  const named = holdings.filter(({ id }) => id === entry.of);
  if (entry.of !== null && named.length === 0)
    return problem("of", "expected a deposit of this hire that is held");
  const open = holdings.filter(({ id }) => entry.kind !== "depositCharged" || !lapsed.includes(id));
  const from = entry.of === null ? open : named;
  const most = from.reduce((sum, { remaining }) => sum + remaining, 0);
  return entry.pence > most ? problem("pence", `expected at most what is held, ${most}`) : [];
}

function checkUndo(entries: readonly LedgerEntry[], entry: NewEntry): readonly InputProblem[] {
  const target = entries.find(({ id }) => id === entry.of);
  if (target === undefined) return problem("of", "expected an entry of this hire");
  if (undoes(target))
    return problem("of", "expected an entry that undoes nothing itself: enter it again instead");
  const { undone, holdings, income } = readLedger(entries);
  if (undone[target.id] !== undefined) return problem("of", "expected an entry that still stands");
  if (entry.pence !== target.pence) return problem("pence", `expected the whole entry, ${target.pence}`);
  if (entry.kind === "failed" && !MOVES.includes(target.kind))
    return problem("of", "expected money that moved: a payment, a refund or a deposit");
  return used(target, holdings, income)
    ? problem("of", "expected an entry that nothing rests on: undo what was paid back or taken from it first")
    : [];
}

const MOVES: readonly LedgerEntry["kind"][] = ["payment", "refund", "depositHeld", "depositReleased"];

/** Whether a refund, release or charge already rests on this entry. */
function used(
  target: LedgerEntry,
  holdings: readonly Holding[],
  income: ReturnType<typeof readLedger>["income"],
): boolean {
  const held = holdings.find(({ id }) => id === target.id);
  const came = income.find(({ id }) => id === target.id);
  return (held !== undefined && held.remaining < held.pence) || (came?.refunded ?? 0) > 0;
}
