import { BadInput } from "@setfair/engine";
import { uuidv7 } from "uuidv7";
import { fromText, toInstantText, toText } from "./codec.ts";
import type { Door } from "./door.ts";
import { allHires, countStages, endingHires, listHires, readHire, searchHires } from "./hire-lists.ts";
import type { HirePartTable } from "./tables.ts";
import type { HireChange, HirePart, HirePartName, HireRow, Store } from "./types.ts";
import { indexWords } from "./words.ts";

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

/** Words by which a hire is found; called whenever name, registration, number or telephone changes. */
export async function indexHire(door: Door, hireId: string): Promise<void> {
  const row = await door
    .from("hire")
    .select(["customer_name", "registration", "number", "customer_id"])
    .where("id", "=", hireId)
    .executeTakeFirstOrThrow();
  const telephone = await telephoneOf(door, row.customer_id);
  await indexWords(door, "hire_word", hireId, [row.customer_name, row.registration, row.number, telephone]);
}

async function telephoneOf(door: Door, customerId: string | null): Promise<string> {
  if (customerId === null) return "";
  const row = await door.from("customer").select("document").where("id", "=", customerId).executeTakeFirst();
  const telephone = row === undefined ? undefined : fromText(row.document).telephone;
  return typeof telephone === "string" ? telephone : "";
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
  return readHire({ ...row, firm_id: door.scope.firmId, depot_id: door.scope.depotId });
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

async function partsOfHires(door: Door, hireIds: readonly string[], names?: readonly HirePartName[]) {
  const found = new Map<string, Partial<Record<HirePartName, HirePart>>>();
  if (hireIds.length === 0) return found;
  let query = door
    .from("hire_part")
    .selectAll()
    .where("hire_id", "in", [...hireIds]);
  if (names !== undefined) query = query.where("name", "in", [...names]);
  for (const row of await query.execute())
    found.set(row.hire_id, { ...found.get(row.hire_id), [row.name]: readPart(row) });
  return found;
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
    return row === undefined ? null : readHire(row);
  };
  return {
    create: (hire) => door.within((inner) => createHire(inner, hire)),
    get: (id) => one("id", id),
    byNumber: (number) => one("number", number),
    update: (id, change, version) => door.within((inner) => updateHire(inner, id, change, version)),
    list: (filter = {}) => listHires(door, filter),
    all: (filter) => allHires(door, filter),
    ending: (from, to) => endingHires(door, from, to),
    counts: (stages) => countStages(door, stages),
    search: (text, filter = {}) => searchHires(door, text, filter),
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
    partsOf: (hireIds, names) => partsOfHires(door, hireIds, names),
    putPart: (hireId, name, document, version, by) =>
      door.within((inner) => putPart(inner, hireId, { name, document: toText(document), version, by })),
  };
}
