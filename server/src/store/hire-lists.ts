import { sql } from "kysely";
import { pageOf, readCursor, rowsOf, toInstantText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { HireTable } from "./tables.ts";
import type { HireFilter, HireRow, HireSearch, HireStage, Paged } from "./types.ts";
import { beginningsOf, endOfBeginning } from "./words.ts";

export const readHire = (row: HireTable): HireRow => ({
  id: row.id,
  number: row.number,
  stage: row.stage as HireStage, // written from a HireStage only
  customerId: row.customer_id,
  customerName: row.customer_name,
  vehicleId: row.vehicle_id,
  registration: row.registration,
  from: row.from_at,
  to: row.to_at,
  version: row.version,
  createdAt: row.created_at,
  updatedAt: row.updated_at,
});

/** One walk along an index for each stage: asked for several at once, SQLite reads every hire of the depot instead. */
export async function listHires(
  door: Door,
  filter: HireFilter,
  limit = rowsOf(filter),
): Promise<Paged<HireRow>> {
  const { stages, ...rest } = filter;
  if (stages === undefined) return hirePage(await listed(door, rest, limit + 1).execute(), limit);
  const rows: HireTable[] = [];
  for (const stage of new Set(stages)) {
    rows.push(
      ...(await listed(door, rest, limit + 1)
        .where("stage", "=", stage)
        .execute()),
    );
  }
  const side = filter.order === "newest" ? -1 : 1;
  rows.sort((a, b) => side * (compare(a.from_at, b.from_at) || compare(a.id, b.id)));
  return hirePage(rows, limit);
}

/** How many rows of an unbounded answer come at once. */
const AT_ONCE = 1000;

export async function allHires(door: Door, filter: HireFilter): Promise<readonly HireRow[]> {
  const rows: HireRow[] = [];
  for (let next: string | null | undefined; next !== null; ) {
    const page: Paged<HireRow> = await listHires(
      door,
      next === undefined ? filter : { ...filter, after: next },
      AT_ONCE,
    );
    rows.push(...page.rows);
    next = page.next;
  }
  return rows;
}

export async function endingHires(door: Door, from: string, to: string): Promise<readonly HireRow[]> {
  const rows = await door
    .from("hire")
    .selectAll()
    .where("to_at", ">=", toInstantText(from, "from"))
    .where("to_at", "<", toInstantText(to, "to"))
    .orderBy("to_at")
    .orderBy("id")
    .execute();
  return rows.map(readHire);
}

export async function countStages(door: Door, stages: readonly HireStage[]) {
  if (stages.length === 0) return {};
  const rows = await door
    .from("hire")
    .select(["stage", ({ fn }) => fn.countAll<number>().as("count")])
    .where("stage", "in", [...stages])
    .groupBy("stage")
    .execute();
  return Object.fromEntries(rows.map(({ stage, count }) => [stage, Number(count)]));
}

/** By code point, as the stores do. */
const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

function listed(door: Door, filter: Omit<HireFilter, "stages">, rows: number) {
  const newest = filter.order === "newest";
  const way = newest ? "desc" : "asc";
  const past = newest ? "<" : ">";
  let query = door.from("hire").selectAll().orderBy("from_at", way).orderBy("id", way).limit(rows);
  if (filter.vehicleId !== undefined) query = query.where("vehicle_id", "=", filter.vehicleId);
  if (filter.customerId !== undefined) query = query.where("customer_id", "=", filter.customerId);
  if (filter.touchesTo !== undefined)
    query = query.where("from_at", "<", toInstantText(filter.touchesTo, "touchesTo"));
  if (filter.touchesFrom !== undefined)
    query = query.where("to_at", ">", toInstantText(filter.touchesFrom, "touchesFrom"));
  if (filter.startsFrom !== undefined)
    query = query.where("from_at", ">=", toInstantText(filter.startsFrom, "startsFrom"));
  if (filter.after !== undefined) {
    const [from, id] = readCursor(filter.after);
    query = query.where((w) =>
      w.or([w("from_at", past, from), w.and([w("from_at", "=", from), w("id", past, id)])]),
    );
  }
  return query;
}

/** Up to so many hires a word is looked up first; a word that more of them have is looked for hire by hire, newest first. */
const RARE = 1000;

/** The hires of the rarest of these beginnings, with the beginnings still to be looked for; no ids where all are common. */
async function rarestOf(door: Door, beginnings: readonly string[]) {
  let ids: readonly string[] | null = null;
  let rarest: string | null = null;
  for (const beginning of beginnings) {
    const most: number = ids === null ? RARE : ids.length;
    const rows = await wordsFrom(door, beginning)
      .limit(most + 1)
      .execute();
    if (rows.length > most) continue;
    ids = [...new Set(rows.map((row) => row.target_id))];
    rarest = beginning;
  }
  return { ids, others: beginnings.filter((beginning) => beginning !== rarest) };
}

const wordsFrom = (door: Door, beginning: string) =>
  door
    .from("hire_word")
    .select("target_id")
    .where("word", ">=", beginning)
    .where("word", "<", endOfBeginning(beginning));

export async function searchHires(door: Door, typed: string, filter: HireSearch): Promise<Paged<HireRow>> {
  const limit = rowsOf(filter);
  const { ids, others } = await rarestOf(door, beginningsOf(typed));
  if (ids?.length === 0) return { rows: [], next: null };
  const { stages, ...rest } = filter;
  if (stages?.length === 0) return { rows: [], next: null };
  let query = listed(door, { ...rest, order: "newest" }, limit + 1);
  if (stages !== undefined) query = query.where("stage", "in", [...stages]);
  if (ids !== null) query = query.where("id", "in", ids);
  for (const beginning of others) {
    const found = wordsFrom(door, beginning).where("target_id", "=", sql.ref<string>("hire.id"));
    query = query.where(({ exists }) => exists(found));
  }
  return hirePage(await query.execute(), limit);
}

const hirePage = (rows: readonly HireTable[], limit: number): Paged<HireRow> =>
  pageOf(rows, limit, readHire, (last) => [last.from, last.id]);
