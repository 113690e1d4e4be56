import {
  assignStock,
  type RoomAnswer,
  type StockAsk,
  type StockItem,
  type StockResult,
  type Terms,
} from "@setfair/engine";
import { Refusal } from "../api/refusal.ts";
import type { DepotRow, StockItemRow, Store } from "../store/types.ts";
import { asDocument, type DepotDocument, type QuoteDocument } from "./documents.ts";
import { type HireData, partOf } from "./hire-data.ts";
import { localOf } from "./local-time.ts";

/** What an item puts aboard when it is packed, and its own dates. */
export interface StockItemDocument {
  /** names of the country kit: vest, triangle, adaptor.… */
  readonly puts: readonly string[];
  readonly validFrom?: string;
  readonly vehicleId?: string;
  readonly note?: string;
}
/** An item as a room takes it; a lot that only the terms count has the id `terms:<extra>`. */
export type KnownItem = StockItem & { readonly row: StockItemRow | null };

const BY_TERMS = "terms:";
export const isByTerms = (itemId: string): boolean => itemId.startsWith(BY_TERMS);

export const asStockItem = (row: StockItemRow): KnownItem => ({
  id: row.id,
  kind: row.kind,
  name: row.name,
  count: row.count,
  ...(row.size === null ? {} : { size: row.size }),
  ...(row.expiresOn === null ? {} : { expiresOn: row.expiresOn }),
  ...(row.retiredOn === null ? {} : { retiredOn: row.retiredOn }),
  row,
});

/** Everything on the shelf; an extra of which nothing was ever put on it counts as the terms say. */
export async function knownItems(store: Store, terms: Terms | null): Promise<readonly KnownItem[]> {
  const rows = await store.stock.items();
  const kinds = new Set(rows.map(({ kind }) => kind));
  const counted = (terms?.extras ?? []).filter(({ id, stock }) => !kinds.has(id) && stock > 0);
  return [
    ...rows.map(asStockItem),
    ...counted.map(({ id, stock }) => ({
      id: `${BY_TERMS}${id}`,
      kind: id,
      name: id,
      count: stock,
      row: null,
    })),
  ];
}

type Extras = QuoteDocument["extras"];

/** The extras, of which some may be asked for by size, and what travels beside them. */
export function joinAsks(extras: Extras, asks: readonly StockAsk[]): readonly StockAsk[] {
  const sized = (kind: string) =>
    asks.filter((ask) => ask.kind === kind).reduce((sum, { count }) => sum + count, 0);
  const rest = extras
    .map(({ id, count }) => ({ kind: id, count: count - sized(id) }))
    .filter(({ count }) => count > 0);
  return [...asks, ...rest];
}

export const stockAsksOf = (data: HireData): readonly StockAsk[] => partOf(data, "stock")?.asks ?? [];

const DAY_MS = 86_400_000;
/** How far around the dates we look for what else holds things. */
const BEFORE_DAYS = 60;
const AFTER_DAYS = 180;

export interface StockQuestion {
  readonly asks: readonly StockAsk[];
  /** instants */
  readonly from: string;
  readonly to: string;
  readonly hireId?: string;
}

/** Which things could serve, or what is short and who has it. */
export async function askStock(
  store: Store,
  depot: DepotRow,
  terms: Terms | null,
  question: StockQuestion,
): Promise<RoomAnswer<StockResult>> {
  if (question.asks.length === 0) return { result: { seats: [], moves: [], short: [] }, findings: [] };
  const items = await knownItems(store, terms);
  const around = (instant: string, days: number) =>
    new Date(Date.parse(instant) + days * DAY_MS).toISOString();
  const held = await store.stock.holdsBetween(
    around(question.from, -BEFORE_DAYS),
    around(question.to, AFTER_DAYS),
  );
  return assignStock({
    items: items.map(({ row: _, ...item }) => item),
    holds: held.map(({ itemId, hireId, count, from, to, packedAt }) => ({
      itemId,
      hireId,
      count,
      from: localOf(from, depot.timeZone),
      to: localOf(to, depot.timeZone),
      packed: packedAt !== null,
    })),
    asks: [...question.asks],
    from: localOf(question.from, depot.timeZone),
    to: localOf(question.to, depot.timeZone),
    turnaroundMinutes: asDocument<DepotDocument>(depot.document).turnaroundMinutes,
    timeZone: depot.timeZone,
    ...(question.hireId === undefined ? {} : { hireId: question.hireId }),
  });
}

/** What is short of the extras and things beside them, for this hire's dates. */
export function stockOfHire(store: Store, data: HireData, extras: Extras) {
  return askStock(store, data.depot, data.terms?.document ?? null, {
    asks: joinAsks(extras, stockAsksOf(data)),
    from: data.row.from,
    to: data.row.to,
    hireId: data.row.id,
  });
}

/**
 * Takes the things for a hire, or refuses with what is short. Within the transaction that books, changes the
 * dates of, or adds to a hire: whoever else asks waits until it ends, so that the last one goes to one hire.
 */
export async function holdStock(
  store: Store,
  data: HireData,
  period: { readonly from: string; readonly to: string } = data.row,
  asks: readonly StockAsk[] = joinAsks(partOf(data, "quote")?.extras ?? [], stockAsksOf(data)),
): Promise<void> {
  await store.stock.lock();
  const terms = data.terms?.document ?? null;
  const { from, to } = period;
  const answer = await askStock(store, data.depot, terms, { asks, from, to, hireId: data.row.id });
  if (answer.result.short.length > 0) throw new Refusal("refused", { findings: answer.findings });
  for (const move of answer.result.moves) await store.stock.moveHold(move);
  await store.stock.replaceHolds(data.row.id, { from, to }, answer.result.seats.flat());
}

/** Who has what is short, by name. */
export async function shortAnswer(store: Store, short: StockResult["short"]) {
  const answers = [];
  for (const { kind, holders, backAt, fitsFrom } of short) {
    const named = [];
    for (const { hireId, ...held } of holders) {
      const row = await store.hires.get(hireId);
      named.push({ ...held, reference: row?.number ?? "", customer: row?.customerName ?? "" });
    }
    answers.push({ kind, holders: named, backAt, fitsFrom });
  }
  return answers;
}
