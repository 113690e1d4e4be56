import { addDays } from "@setfair/engine";
import type { z } from "zod";
import { Refusal } from "../api/refusal.ts";
import type { hireStockSchema, stockHistorySchema, stockListSchema } from "../api/schemas/stock.ts";
import type { DepotRow, StockHoldRow, Store } from "../store/types.ts";
import { asDocument } from "./documents.ts";
import { plainFinding } from "./glass.ts";
import { partOf, readHireData, termsOf } from "./hire-data.ts";
import { dateOf, localOf } from "./local-time.ts";
import { accountNames } from "./names.ts";
import {
  type KnownItem,
  knownItems,
  type StockItemDocument,
  shortAnswer,
  stockAsksOf,
  stockOfHire,
} from "./stock.ts";

type StockList = z.input<typeof stockListSchema>;
type Item = StockList["items"][number];

/** Ahead of its last day by so many days a thing is shown as going out of date. */
const SOON_DAYS = 60;
const DAY_MS = 86_400_000;

export const documentOf = ({ row }: KnownItem): StockItemDocument =>
  row === null ? { puts: [] } : asDocument<StockItemDocument>(row.document);

interface Seen {
  readonly depot: DepotRow;
  readonly now: string;
  readonly today: string;
}

async function holdAnswer(store: Store, { depot }: Seen, hold: StockHoldRow) {
  const row = await store.hires.get(hold.hireId);
  return {
    id: hold.id,
    hireId: hold.hireId,
    reference: row?.number ?? "",
    customer: row?.customerName ?? "",
    count: hold.count,
    from: localOf(hold.from, depot.timeZone),
    to: localOf(hold.to, depot.timeZone),
    packedAt: hold.packedAt,
  };
}

function dateState({ expiresOn, retiredOn }: KnownItem, today: string): Item["date"] {
  if (retiredOn !== undefined && retiredOn <= today) return "retired";
  if (expiresOn === undefined) return "good";
  if (expiresOn < today) return "over";
  return expiresOn <= addDays(today, SOON_DAYS) ? "soon" : "good";
}

async function itemAnswer(
  store: Store,
  seen: Seen,
  item: KnownItem,
  held: readonly StockHoldRow[],
): Promise<Item> {
  const mine = held.filter(({ itemId }) => itemId === item.id);
  const out = mine.filter(({ from, to }) => from <= seen.now && seen.now < to);
  const { row: _, ...fields } = item;
  const { puts, ...document } = documentOf(item);
  const date = dateState(item, seen.today);
  const holds = [];
  for (const hold of mine) holds.push(await holdAnswer(store, seen, hold));
  return {
    ...fields,
    ...document,
    puts: [...puts],
    version: item.row?.version ?? 0,
    byTerms: item.row === null,
    date,
    freeNow:
      date === "over" || date === "retired" ? 0 : item.count - out.reduce((sum, { count }) => sum + count, 0),
    holds,
  };
}

async function see(store: Store, now: Date): Promise<Seen> {
  const depot = await store.depot.get();
  return { depot, now: now.toISOString(), today: dateOf(localOf(now.toISOString(), depot.timeZone)) };
}
const itemsOf = async (store: Store, { today }: Seen) =>
  knownItems(store, (await termsOf(store, null, today))?.document ?? null);
const ahead = (now: string, days: number) => new Date(Date.parse(now) + days * DAY_MS).toISOString();

/** Everything on the shelf, with who has it now or will. */
export async function stockList(store: Store, now: Date): Promise<StockList> {
  const seen = await see(store, now);
  const held = await store.stock.holdsBetween(seen.now, ahead(seen.now, 400));
  const items = [];
  for (const item of await itemsOf(store, seen)) items.push(await itemAnswer(store, seen, item, held));
  return { today: seen.today, items };
}

export async function stockHistory(
  store: Store,
  id: string,
  now: Date,
): Promise<z.input<typeof stockHistorySchema>> {
  const seen = await see(store, now);
  const item = (await itemsOf(store, seen)).find((each) => each.id === id);
  if (item === undefined) throw new Refusal("notFound");
  const held = await store.stock.holdsBetween(seen.now, ahead(seen.now, 400));
  const over = await store.stock.holdsBetween(ahead(seen.now, -800), seen.now);
  const past = [];
  for (const hold of over.filter(({ itemId, to }) => itemId === id && to <= seen.now).reverse())
    past.push(await holdAnswer(store, seen, hold));
  const nameOf = await accountNames(store);
  const history = [];
  for (const { at, by, act, document } of await store.stock.events(id)) {
    const { hireId, note } = asDocument<{ hireId?: string; note?: string }>(document);
    const row = hireId === undefined ? null : await store.hires.get(hireId);
    history.push({ at, by: nameOf(by), act, reference: row?.number ?? null, note: note ?? "" });
  }
  return { item: await itemAnswer(store, seen, item, held), history: history.reverse(), past };
}

/** What travels with a hire, what of it is packed, and what is short as asked. */
export async function hireStock(
  store: Store,
  id: string,
  now: Date,
): Promise<z.input<typeof hireStockSchema>> {
  const data = await readHireData(store, id, now);
  const items = await knownItems(store, data.terms?.document ?? null);
  const itemOf = new Map(items.map((item) => [item.id, item]));
  const holds = (await store.stock.holdsOf([id])).flatMap((hold) => {
    const item = itemOf.get(hold.itemId);
    if (item === undefined) return [];
    return [
      {
        id: hold.id,
        itemId: hold.itemId,
        kind: item.kind,
        name: item.name,
        size: item.size ?? null,
        count: hold.count,
        puts: [...documentOf(item).puts],
        expiresOn: item.expiresOn ?? null,
        packedAt: hold.packedAt,
        isBack: hold.to < data.row.to,
      },
    ];
  });
  const isOpen = ["enquiry", "quote", "booked"].includes(data.row.stage);
  const answer = isOpen ? await stockOfHire(store, data, partOf(data, "quote")?.extras ?? []) : null;
  const kinds = [...new Set(items.map(({ kind }) => kind))].sort();
  return {
    asks: [...stockAsksOf(data)],
    version: data.parts.stock?.version ?? 0,
    holds,
    kinds: kinds.map((kind) => ({
      kind,
      sizes: [
        ...new Set(
          items.flatMap((item) => (item.kind === kind && item.size !== undefined ? [item.size] : [])),
        ),
      ].sort(),
    })),
    findings: answer?.findings.map(plainFinding) ?? [],
    short: await shortAnswer(store, answer?.result.short ?? []),
  };
}
