import { type AnyRecord, photographsWhenErased, whenErased } from "@setfair/records";
import type { Door } from "./door.ts";
import { eraseRecords } from "./erase-records.ts";
import { holdPhotographs, removePhotographs } from "./remove-photographs.ts";

/** Papers about a settlement that show a person, not a vehicle: the copy of a fine or a toll. */
const PERSONAL_ENTRIES: ReadonlySet<string> = new Set(["notice"]);

/**
 * What was recorded and photographed of the hires of a person who is erased. What the person signed and said goes at
 * once, with its photographs and with every photograph of the hire that no record names. What shows the vehicle is
 * marked, and goes when its time is over (rule `settlement.photographsKeptYears`). Called before the settlement
 * entries are emptied, since these name photographs too.
 * @param names full names, mail addresses and telephone numbers of the hirer and the drivers
 * @returns how many records were erased now
 */
export async function eraseHires(
  door: Door,
  hireIds: readonly string[],
  names: readonly string[],
): Promise<number> {
  let erased = 0;
  for (const id of hireIds) erased += await eraseHire(door, id, names);
  return erased;
}

async function eraseHire(door: Door, hireId: string, names: readonly string[]): Promise<number> {
  const { to_at: endedAt } = await door
    .from("hire")
    .select("to_at")
    .where("id", "=", hireId)
    .executeTakeFirstOrThrow();
  const records = await recordsOf(door, hireId);
  const when = (which: string) =>
    records.filter((record) => whenErased(record, names) === which).map(({ id }) => id);
  const shown = photographsWhenErased(records);
  const papers = await papersOf(door, hireId);
  const later = new Set([...shown.later, ...papers.later.filter((hash) => !shown.now.includes(hash))]);
  const named = new Set([...shown.now, ...later]);
  const others = [...papers.now, ...(await sentFor(door, hireId))].filter((hash) => !named.has(hash));
  await removePhotographs(door, [...shown.now, ...others], "erasure");
  await holdPhotographs(door, [...later], endedAt);
  for (const id of when("later"))
    await door.change("record", { held_from: endedAt }).where("id", "=", id).execute();
  return eraseRecords(door, when("now"));
}

async function recordsOf(door: Door, hireId: string): Promise<readonly AnyRecord[]> {
  const rows = await door
    .from("record")
    .select("body")
    .where("hire_id", "=", hireId)
    .where("erased_at", "is", null)
    .orderBy("receipt_seq")
    .execute();
  return rows.map(({ body }) => JSON.parse(body) as AnyRecord);
}

/** Photographs that the settlement's entries name, wherever in them. */
async function papersOf(door: Door, hireId: string) {
  const rows = await door
    .from("settlement_entry")
    .select(["kind", "document"])
    .where("hire_id", "=", hireId)
    .execute();
  const of = (isPersonal: boolean) =>
    rows
      .filter(({ kind }) => PERSONAL_ENTRIES.has(kind) === isPersonal)
      .flatMap(({ document }) => [...document.matchAll(/"([0-9a-f]{64})"/g)].map(([, hash = ""]) => hash));
  return { now: of(true), later: of(false) };
}

/** Photographs that were sent for this hire, named by a record or not. */
async function sentFor(door: Door, hireId: string): Promise<readonly string[]> {
  const rows = await door.from("photograph").select("sha256").where("hire_id", "=", hireId).execute();
  return rows.map(({ sha256 }) => sha256);
}

/** What a device sent only after the person was erased goes the same way; names are not known any more, kinds are. */
export async function eraseLateArrivals(door: Door, recordIds: readonly string[]): Promise<void> {
  for (let start = 0; start < recordIds.length; start += 500) {
    const arrived = door
      .from("record")
      .select("hire_id")
      .where("id", "in", recordIds.slice(start, start + 500));
    const hires = await door
      .from("hire")
      .select("id")
      // emptied at the erasure, and a name is never empty before
      .where("customer_name", "=", "")
      .where("customer_id", "is not", null)
      .where("id", "in", arrived)
      .execute();
    await eraseHires(
      door,
      hires.map(({ id }) => id),
      [],
    );
  }
}
