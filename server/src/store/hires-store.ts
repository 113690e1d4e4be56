import { BadInput } from "@setfair/engine";
import { sql } from "kysely";
import { uuidv7 } from "uuidv7";
import { fromText, readCursor, rowsOf, toInstantText, toText, writeCursor } from "./codec.ts";
import type { Door } from "./door.ts";
import type { HirePartTable, HireTable } from "./tables.ts";
import type {
  HireChange,
  HireFilter,
  HirePart,
  HirePartName,
  HireRow,
  HireStage,
  Paged,
  Store,
} from "./types.ts";
import { beginningsOf, endOfBeginning, indexWords } from "./words.ts";

const read = (row: HireTable): HireRow => ({
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

const readPart = (row: HirePartTable): HirePart => ({
  name: row.name as HirePartName, // written from a HirePartName only
  document: fromText(row.document),
  version: row.version,
  updatedAt: row.updated_at,
  updatedBy: row.updated_by,
});

function checkPeriod(from: string, to: string): void {
  if (from >= to) throw new BadInput([{ path: "to", expected: "an instant after from" }]);
}

/** Words by which a hire is found; called whenever one of the three changes. */
export async function indexHire(door: Door, hireId: string): Promise<void> {
  const row = await door
    .from("hire")
    .select(["customer_name", "registration", "number"])
    .where("id", "=", hireId)
    .executeTakeFirstOrThrow();
  await indexWords(door, "hire_word", hireId, [row.customer_name, row.registration, row.number]);
}

async function nameOf(door: Door, customerId: string | null): Promise<string> {
  if (customerId === null) return "";
  const row = await door.from("customer").select("name").where("id", "=", customerId).executeTakeFirst();
  if (row === undefined) throw new BadInput([{ path: "customerId", expected: "a customer of this depot" }]);
  return row.name;
}

async function createHire(door: Door, hire: Parameters<Store["hires"]["create"]>[0]): Promise<HireRow> {
  const at = door.now();
  const from = toInstantText(hire.from, "from");
  const to = toInstantText(hire.to, "to");
  checkPeriod(from, to);
  const year = at.slice(2, 4);
  const row = {
    id: hire.id ?? uuidv7(),
    number: `${year}-${String(await door.lock(`hireNumber:${year}`)).padStart(4, "0")}`,
    stage: hire.stage ?? "enquiry",
    customer_id: hire.customerId ?? null,
    customer_name: await nameOf(door, hire.customerId ?? null),
    vehicle_id: null,
    registration: "",
    from_at: from,
    to_at: to,
    version: 1,
    created_at: at,
    updated_at: at,
  };
  await door.insert("hire", row).execute();
  await indexHire(door, row.id);
  return read({ ...row, firm_id: door.scope.firmId, depot_id: door.scope.depotId });
}

async function updateHire(door: Door, id: string, change: HireChange, version: number) {
  const now = await door.from("hire").selectAll().where("id", "=", id).executeTakeFirst();
  if (now === undefined) return { ok: false, why: "notFound" } as const;
  const from = change.from === undefined ? now.from_at : toInstantText(change.from, "from");
  const to = change.to === undefined ? now.to_at : toInstantText(change.to, "to");
  checkPeriod(from, to);
  const customerId = change.customerId === undefined ? now.customer_id : change.customerId;
  const { numUpdatedRows } = await door
    .change("hire", {
      stage: change.stage ?? now.stage,
      customer_id: customerId,
      customer_name: await nameOf(door, customerId),
      vehicle_id: change.vehicleId === undefined ? now.vehicle_id : change.vehicleId,
      registration: change.registration ?? now.registration,
      from_at: from,
      to_at: to,
      version: version + 1,
      updated_at: door.now(),
    })
    .where("id", "=", id)
    .where("version", "=", version)
    .executeTakeFirst();
  if (numUpdatedRows !== 1n) return { ok: false, why: "stale", version: now.version } as const;
  await indexHire(door, id);
  return { ok: true, version: version + 1 } as const;
}

/** One walk along an index for each stage: asked for several at once, SQLite reads every hire of the depot instead. */
async function listHires(door: Door, filter: HireFilter): Promise<Paged<HireRow>> {
  const limit = rowsOf(filter);
  const { stages, ...rest } = filter;
  if (stages === undefined) return pageOf(await listed(door, rest, limit + 1).execute(), limit);
  const rows: HireTable[] = [];
  for (const stage of new Set(stages)) {
    rows.push(
      ...(await listed(door, rest, limit + 1)
        .where("stage", "=", stage)
        .execute()),
    );
  }
  rows.sort((a, b) => compare(a.from_at, b.from_at) || compare(a.id, b.id));
  return pageOf(rows, limit);
}

/** By code point, as the stores do. */
const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

function listed(door: Door, filter: Omit<HireFilter, "stages">, rows: number) {
  let query = door.from("hire").selectAll().orderBy("from_at").orderBy("id").limit(rows);
  if (filter.vehicleId !== undefined) query = query.where("vehicle_id", "=", filter.vehicleId);
  if (filter.customerId !== undefined) query = query.where("customer_id", "=", filter.customerId);
  if (filter.touchesTo !== undefined)
    query = query.where("from_at", "<", toInstantText(filter.touchesTo, "touchesTo"));
  if (filter.touchesFrom !== undefined)
    query = query.where("to_at", ">", toInstantText(filter.touchesFrom, "touchesFrom"));
  if (filter.after !== undefined) {
    const [from, id] = readCursor(filter.after);
    query = query.where((w) =>
      w.or([w("from_at", ">", from), w.and([w("from_at", "=", from), w("id", ">", id)])]),
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

async function searchHires(
  door: Door,
  typed: string,
  page: { limit?: number; after?: string },
): Promise<Paged<HireRow>> {
  const limit = rowsOf(page);
  const { ids, others } = await rarestOf(door, beginningsOf(typed));
  if (ids?.length === 0) return { rows: [], next: null };
  let query = door
    .from("hire")
    .selectAll()
    .orderBy("from_at", "desc")
    .orderBy("id", "desc")
    .limit(limit + 1);
  if (ids !== null) query = query.where("id", "in", ids);
  for (const beginning of others) {
    const found = wordsFrom(door, beginning).where("target_id", "=", sql.ref<string>("hire.id"));
    query = query.where(({ exists }) => exists(found));
  }
  if (page.after !== undefined) {
    const [from, id] = readCursor(page.after);
    query = query.where((w) =>
      w.or([w("from_at", "<", from), w.and([w("from_at", "=", from), w("id", "<", id)])]),
    );
  }
  return pageOf(await query.execute(), limit);
}

function pageOf(rows: readonly HireTable[], limit: number): Paged<HireRow> {
  const shown = rows.slice(0, limit).map(read);
  const last = shown.at(-1);
  return {
    rows: shown,
    next: rows.length > limit && last !== undefined ? writeCursor([last.from, last.id]) : null,
  };
}

async function putPart(
  door: Door,
  hireId: string,
  part: { name: HirePartName; document: string; version: number; by: string },
) {
  const hire = await door.from("hire").select("id").where("id", "=", hireId).executeTakeFirst();
  if (hire === undefined) return { ok: false, why: "notFound" } as const;
  const { name, document, version, by } = part;
  const set = { document, version: version + 1, updated_at: door.now(), updated_by: by };
  if (version === 0) {
    const added = await door
      .insert("hire_part", { hire_id: hireId, name, ...set })
      .onConflict((on) => on.columns(["firm_id", "depot_id", "hire_id", "name"]).doNothing())
      .returning("version")
      .executeTakeFirst();
    if (added !== undefined) return { ok: true, version: 1 } as const;
  } else {
    const { numUpdatedRows } = await door
      .change("hire_part", set)
      .where("hire_id", "=", hireId)
      .where("name", "=", name)
      .where("version", "=", version)
      .executeTakeFirst();
    if (numUpdatedRows === 1n) return { ok: true, version: version + 1 } as const;
  }
  const now = await door
    .from("hire_part")
    .select("version")
    .where("hire_id", "=", hireId)
    .where("name", "=", name)
    .executeTakeFirst();
  return { ok: false, why: "stale", version: now?.version ?? 0 } as const;
}

export function hiresStore(door: Door): Store["hires"] {
  const one = async (column: "id" | "number", value: string) => {
    const row = await door.from("hire").selectAll().where(column, "=", value).executeTakeFirst();
    return row === undefined ? null : read(row);
  };
  return {
    create: (hire) => door.within((inner) => createHire(inner, hire)),
    get: (id) => one("id", id),
    byNumber: (number) => one("number", number),
    update: (id, change, version) => door.within((inner) => updateHire(inner, id, change, version)),
    list: (filter = {}) => listHires(door, filter),
    search: (text, page = {}) => searchHires(door, text, page),
    async part(hireId, name) {
      const row = await door
        .from("hire_part")
        .selectAll()
        .where("hire_id", "=", hireId)
        .where("name", "=", name)
        .executeTakeFirst();
      return row === undefined ? null : readPart(row);
    },
    async parts(hireId) {
      const rows = await door.from("hire_part").selectAll().where("hire_id", "=", hireId).execute();
      return Object.fromEntries(rows.map((row) => [row.name, readPart(row)]));
    },
    putPart: (hireId, name, document, version, by) =>
      door.within((inner) => putPart(inner, hireId, { name, document: toText(document), version, by })),
  };
}
