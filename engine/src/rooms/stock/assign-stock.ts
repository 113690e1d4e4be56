import { BadInput } from "../../base/bad-input.ts";
import type { Finding } from "../../base/finding.ts";
import { makeFinding } from "../make-finding.ts";
import { reseat } from "./reseat-stock.ts";
import { freeOf, type Held, type HeldSpan, isGood, localAt, spanOf, touches } from "./stock-time.ts";
import type {
  AssignStock,
  StockAsk,
  StockInput,
  StockItem,
  StockResult,
  StockSeat,
  StockShort,
} from "./types.ts";

/**
 * Which things serve a hire, assigned in time like vehicles: periods are half open, the turnaround comes after
 * each. What goes out of date before the end of the hire is not used. Where too few are free as they are
 * promised, things not yet packed may change places between hires; where that does not help either the finding
 * says who has the others and when one is back.
 * @throws BadInput where the hire ends before it starts
 */
export const assignStock: AssignStock = (input) => {
  if (input.to <= input.from)
    throw new BadInput([{ path: "to", expected: `expected a time after ${input.from}` }]);
  const span = spanOf(input.from, input.to, input);
  let held: readonly Held[] = input.holds
    .filter(({ hireId }) => hireId !== input.hireId)
    .map((hold) => ({ ...spanOf(hold.from, hold.to, input), hold }));
  const seats: (readonly StockSeat[])[] = [];
  const short: StockShort[] = [];
  for (const ask of input.asks) {
    const found = seatAsk(input, ask, span, held) ?? reseat(input, ask, span, held);
    seats.push(found?.seats ?? []);
    if (found === null) short.push(shortOf(input, ask, span, held));
    else held = [...found.held, ...found.seats.map((seat) => heldBy(input, seat, span))];
  }
  const moves = movesOf(input, held);
  return { result: { seats, moves, short }, findings: short.map(shortFinding) };
};

function heldBy(input: StockInput, seat: StockSeat, span: HeldSpan): Held {
  const { from, to } = input;
  return { ...span, hold: { ...seat, hireId: input.hireId ?? "", from, to, packed: false } };
}

const servesAsk = (item: StockItem, ask: StockAsk): boolean =>
  item.kind === ask.kind && (ask.size === undefined || item.size === ask.size);

/** What this hire has packed stays with it; else the thing that goes out of date first, then the one that came back last before: gaps are left whole. */
function seatAsk(input: StockInput, ask: StockAsk, span: HeldSpan, held: readonly Held[]) {
  const idleSince = (item: StockItem) =>
    Math.max(
      -Infinity,
      ...held
        .filter(({ hold, ready }) => hold.itemId === item.id && ready <= span.start)
        .map(({ ready }) => ready),
    );
  const packed = new Set(
    input.holds.flatMap((hold) => (hold.packed && hold.hireId === input.hireId ? [hold.itemId] : [])),
  );
  const able = input.items
    .filter((item) => servesAsk(item, ask) && isGood(item, input.to))
    .map((item) => ({ item, free: freeOf(item, span, held), since: idleSince(item) }))
    .sort(
      (a, b) =>
        Number(packed.has(b.item.id)) - Number(packed.has(a.item.id)) ||
        (a.item.expiresOn ?? "9").localeCompare(b.item.expiresOn ?? "9") ||
        (a.since === b.since ? 0 : b.since - a.since),
    );
  let left = ask.count;
  const seats: StockSeat[] = [];
  for (const { item, free } of able) {
    const count = Math.min(free, left);
    if (count > 0) seats.push({ itemId: item.id, count });
    left -= count;
  }
  return left > 0 ? null : { seats, held };
}

/**
 * What changes places, as a whole for each hire: of two like things that would only change with each other neither
 * moves, so that the moves may be done one after the other.
 */
function movesOf(input: StockInput, held: readonly Held[]): StockResult["moves"] {
  const before = input.holds.filter(({ hireId }) => hireId !== input.hireId);
  const itemOf = new Map(input.items.map((item) => [item.id, item]));
  const alike = new Map<
    string,
    { readonly hireId: string; readonly from: string[]; readonly to: string[] }
  >();
  before.forEach((was, k) => {
    const now = held[k]?.hold ?? was;
    const item = itemOf.get(was.itemId);
    const key = JSON.stringify([was.hireId, was.from, was.to, item?.kind, item?.size]);
    const group = alike.get(key) ?? { hireId: was.hireId, from: [], to: [] };
    group.from.push(was.itemId);
    group.to.push(now.itemId);
    alike.set(key, group);
  });
  return [...alike.values()].flatMap(({ hireId, from, to }) => {
    const left = without(from, to);
    return without(to, from).map((itemId, k) => ({ hireId, from: left[k]!, to: itemId, count: 1 }));
  });
}

/** What stands in the first list beyond what the second holds, each as often. */
function without(list: readonly string[], other: readonly string[]): string[] {
  const rest = [...other];
  return list.filter((id) => {
    const at = rest.indexOf(id);
    if (at >= 0) rest.splice(at, 1);
    return at < 0;
  });
}

function shortOf(input: StockInput, ask: StockAsk, span: HeldSpan, held: readonly Held[]): StockShort {
  const items = input.items.filter((item) => servesAsk(item, ask) && isGood(item, input.to));
  const ids = new Set(items.map(({ id }) => id));
  const freeIn = (when: HeldSpan) => items.reduce((sum, item) => sum + freeOf(item, when, held), 0);
  const mine = held.filter(({ hold }) => ids.has(hold.itemId));
  const holders = mine.filter((each) => touches(each, span));
  const first = holders.map(({ ready }) => ready).sort((a, b) => a - b)[0];
  const fits = mine
    .map(({ ready }) => ready)
    .filter((ready) => ready > span.start)
    .sort((a, b) => a - b)
    .find((start) => freeIn({ start, ready: start + span.ready - span.start }) >= ask.count);
  const local = (at: number | undefined) => (at === undefined ? null : localAt(at, input.timeZone));
  return {
    kind: ask.kind,
    size: ask.size ?? null,
    wanted: ask.count,
    have: items.reduce((sum, { count }) => sum + count, 0),
    free: freeIn(span),
    holders: holders.map(({ hold: { hireId, count, from, to } }) => ({ hireId, count, from, to })),
    backAt: local(first),
    fitsFrom: local(fits),
  };
}

function shortFinding({ kind, size, wanted, have, free, backAt }: StockShort): Finding {
  return makeFinding("diary", "stock.short", "refuse", "policy", {
    about: kind,
    facts: { kind, size: size ?? "any", wanted, have, free, backAt: backAt ?? "none" },
    mends: ["stock.fewer", "stock.shift"],
  });
}
