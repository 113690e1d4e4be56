import { freeOf, type Held, type HeldSpan, isGood } from "./stock-time.ts";
import type { StockAsk, StockInput, StockItem, StockSeat } from "./types.ts";

/** Tried in this order at most so many times before the answer is no. */
interface Unit extends Held {
  /** place in the list of what is held; -1 for what is asked for now */
  readonly place: number;
  readonly serves: (item: StockItem) => boolean;
}

/**
 * Seats everything of a kind anew, in order of its start, each unit on the thing that goes out of date first.
 * What is packed stays where it is. Null where somebody would go without.
 */
export function reseat(
  input: StockInput,
  ask: StockAsk,
  span: HeldSpan,
  held: readonly Held[],
): { readonly seats: readonly StockSeat[]; readonly held: readonly Held[] } | null {
  const items = input.items.filter(({ kind }) => kind === ask.kind);
  const itemOf = new Map(items.map((item) => [item.id, item]));
  const isFixed = ({ hold }: Held) => hold.packed || hold.count > 1 || !itemOf.has(hold.itemId);
  const units: Unit[] = held.flatMap((each, place) =>
    isFixed(each) || each.hold.hireId === (input.hireId ?? "")
      ? []
      : [{ ...each, place, serves: (item) => item.size === itemOf.get(each.hold.itemId)?.size }],
  );
  const asked = { itemId: "", hireId: input.hireId ?? "", count: 1, packed: false };
  for (let n = 0; n < ask.count; n++) {
    const hold = { ...asked, from: input.from, to: input.to };
    units.push({
      ...span,
      hold,
      place: -1,
      serves: ({ size }) => ask.size === undefined || size === ask.size,
    });
  }
  const moving = new Set(units.map(({ place }) => place));
  const seated = [...held.filter((_, place) => !moving.has(place))];
  const result = [...held];
  const seats = new Map<string, number>();
  for (const unit of units.sort((a, b) => a.start - b.start || a.ready - b.ready)) {
    const item = items
      .filter((each) => unit.serves(each) && isGood(each, unit.hold.to))
      .sort((a, b) => (a.expiresOn ?? "9").localeCompare(b.expiresOn ?? "9"))
      .find((each) => freeOf(each, unit, seated) > 0);
    if (item === undefined) return null;
    const now: Held = { start: unit.start, ready: unit.ready, hold: { ...unit.hold, itemId: item.id } };
    seated.push(now);
    if (unit.place >= 0) result[unit.place] = now;
    else seats.set(item.id, (seats.get(item.id) ?? 0) + 1);
  }
  return { seats: [...seats].map(([itemId, count]) => ({ itemId, count })), held: result };
}
