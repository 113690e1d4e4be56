import type { z } from "zod";
import type { enquiriesSchema } from "../api/schemas/enquiries.ts";
import type { DepotRow, HireRow, Store } from "../store/types.ts";
import { answerEnquiry } from "./answer-enquiry.ts";
import {
  asDocument,
  type CustomerDocument,
  type EndingDocument,
  type PartDocuments,
  type VehicleDocument,
  type WaitingDocument,
} from "./documents.ts";
import { dateOf, localOf } from "./local-time.ts";

type EnquiriesPage = z.input<typeof enquiriesSchema>;
type Parts = Partial<Record<string, { readonly document: object }>>;

const partIn = <Name extends keyof PartDocuments>(parts: Parts | undefined, name: Name) =>
  (parts?.[name]?.document ?? null) as PartDocuments[Name] | null; // written by this server only

const SHOWN = 60;
/** Waiting ones for whom we look through the fleet at once. */
const LOOKED = 25;

/** Who waits and could be served now, and what was lost, cancelled or not taken, and why. */
export async function enquiriesPage(store: Store, now: Date, withEnded: boolean): Promise<EnquiriesPage> {
  const depot = await store.depot.get();
  const today = dateOf(localOf(now.toISOString(), depot.timeZone));
  const ended = withEnded ? await endedHires(store, depot) : [];
  const counts = new Map<string, { as: string; code: string; count: number }>();
  for (const { as, code } of ended) {
    const key = `${as} ${code}`;
    const before = counts.get(key)?.count ?? 0;
    counts.set(key, { as, code: code ?? "other", count: before + 1 });
  }
  return {
    waiting: await waitingHires(store, depot, now),
    classes: await classesOf(store, today),
    ended,
    reasons: [...counts.values()].sort((a, b) => b.count - a.count),
  };
}

/** Classes of the depot's vehicles. */
export async function classesOf(store: Store, today: string): Promise<string[]> {
  const versions = await store.vehicles.allOn(today);
  return [
    ...new Set(versions.map(({ document }) => asDocument<VehicleDocument>(document).vehicleClass)),
  ].sort();
}

async function lineOf(store: Store, depot: DepotRow, row: HireRow, parts: Parts | undefined) {
  const customer = row.customerId === null ? null : await store.customers.get(row.customerId);
  const { telephone = "" } = asDocument<Partial<CustomerDocument>>(customer?.document ?? {});
  return {
    hireId: row.id,
    reference: row.number,
    customer: row.customerName,
    telephone,
    people: partIn(parts, "party")?.travellers?.length ?? 0,
    from: localOf(row.from, depot.timeZone),
    to: localOf(row.to, depot.timeZone),
  };
}

/** Those on the list, the longest waiting first, each with the vehicles that could serve them now. */
export async function waitingHires(
  store: Store,
  depot: DepotRow,
  now: Date,
): Promise<EnquiriesPage["waiting"]> {
  const rows = await store.hires.all({ stages: ["enquiry", "quote"], startsFrom: now.toISOString() });
  const parts = await store.hires.partsOf(
    rows.map(({ id }) => id),
    ["party", "asked", "waiting"],
  );
  const waiting = rows
    .flatMap((row) => {
      const wait = partIn(parts.get(row.id), "waiting");
      const versions = { hire: row.version, waiting: parts.get(row.id)?.waiting?.version ?? 0 };
      return wait?.since == null ? [] : [{ row, wait, since: wait.since, versions }];
    })
    .sort((a, b) => (a.since < b.since ? -1 : 1));
  const lines = [];
  for (const [n, { row, wait, since, versions }] of waiting.entries())
    lines.push({
      ...(await lineOf(store, depot, row, parts.get(row.id))),
      since,
      versions,
      classes: [...wait.classes],
      flexDays: wait.flexDays,
      could: n < LOOKED ? await couldServe(store, depot, now, { row, wait, parts: parts.get(row.id) }) : [],
    });
  return lines;
}

interface Waiter {
  readonly row: HireRow;
  readonly wait: WaitingDocument;
  readonly parts: Parts | undefined;
}

/** Vehicles of the wanted classes on the wanted days, or moved by no more than the days that may give. */
async function couldServe(store: Store, depot: DepotRow, now: Date, { row, wait, parts }: Waiter) {
  const party = partIn(parts, "party");
  if (party?.travellers === undefined) return [];
  const [from, to] = [localOf(row.from, depot.timeZone), localOf(row.to, depot.timeZone)];
  const asked = partIn(parts, "asked");
  const answer = await answerEnquiry(store, depot, now, {
    party,
    from,
    to,
    hireId: row.id,
    ...(asked === null ? {} : { asked }),
  });
  return answer.vehicles
    .filter(({ vehicleClass }) => wait.classes.length === 0 || wait.classes.includes(vehicleClass))
    .flatMap(({ id, name, registration, possible, findings, nearestChanges, price }) => {
      const line = { id, name, registration, price };
      if (possible) return [{ ...line, from, to }];
      const onlyTaken = findings
        .filter(({ severity }) => severity === "refuse")
        .every(({ code }) => code === "diary.taken" || code === "diary.offTheRoad");
      const shift = nearestChanges.find(
        ({ kind, shiftHours = Infinity }) => kind === "shift" && Math.abs(shiftHours) <= wait.flexDays * 24,
      );
      return onlyTaken && shift?.from !== undefined && shift.to !== undefined
        ? [{ ...line, from: shift.from, to: shift.to, price: null }]
        : [];
    });
}

async function endedHires(store: Store, depot: DepotRow): Promise<EnquiriesPage["ended"]> {
  const { rows } = await store.hires.list({
    stages: ["lost", "cancelled", "noShow"],
    order: "newest",
    limit: SHOWN,
  });
  const parts = await store.hires.partsOf(
    rows.map(({ id }) => id),
    ["party", "ending"],
  );
  const lines = [];
  for (const row of rows) {
    const as = row.stage;
    if (as !== "lost" && as !== "cancelled" && as !== "noShow") continue;
    const ending: EndingDocument | null = partIn(parts.get(row.id), "ending");
    const { rows: entries } = await store.audit.list({ about: row.id, limit: 20 });
    const entry = entries.find(({ act }) => act === `hire.${as}`);
    const reason = entry?.document.reason;
    lines.push({
      ...(await lineOf(store, depot, row, parts.get(row.id))),
      as,
      code: ending?.code ?? null,
      reason: typeof reason === "string" ? reason : "",
      at: ending?.at ?? entry?.at ?? row.updatedAt,
      keep: ending?.charge?.keep ?? null,
      refund: ending?.charge?.refund ?? null,
    });
  }
  return lines;
}
