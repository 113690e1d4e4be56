import { type AllocationInput, checkDueDates, checkSeats, type Finding, type Party } from "@setfair/engine";
import type { z } from "zod";
import type { tidySchema } from "../api/schemas/diary.ts";
import type { Planner } from "../planner/planner.ts";
import type { BlockRow, DepotRow, HireRow, Store } from "../store/types.ts";
import { type DiarySpan, pinnedOf } from "./diary-page.ts";
import { asDocument, type DepotDocument, type VehicleDocument } from "./documents.ts";
import { plainFinding } from "./glass.ts";
import { dateOf, localOf } from "./local-time.ts";
import { countGaps, findClash, type Held } from "./sellable-gaps.ts";

type Tidy = z.input<typeof tidySchema>;
type Engine = AllocationInput["hires"][number];

/** A free stretch counts where a hire of so many nights would still fit. */
const NIGHTS = 3;
const LONGEST_MS = 367 * 86_400_000;
/** Enough for a fleet's season, short enough to wait for. */
const SECONDS = 2;

interface Asked {
  readonly store: Store;
  readonly depot: DepotRow;
  readonly now: Date;
  readonly span: DiarySpan;
  readonly plan: Planner;
}

/**
 * Which bookings could change vehicles so that more can be sold. Only what is booked, not pinned and still to
 * come moves, and only within the class that was quoted; everything else stays where it is.
 */
export async function proposeTidy(asked: Asked): Promise<Tidy> {
  const { store, depot, now, span } = asked;
  const { turnaroundMinutes } = asDocument<DepotDocument>(depot.document);
  const rows = await bookedRows(asked);
  const versions = await store.vehicles.allOn(span.to);
  const fleet = new Map(versions.map(({ of, document }) => [of, asDocument<VehicleDocument>(document)]));
  const blocks = await store.blocks.between(span.start, span.end);
  const hires = await asEngineHires(asked, rows, fleet);
  const input: AllocationInput = {
    objective: "plan",
    turnaroundMinutes,
    sellableMinutes: NIGHTS * 1440,
    vehicles: [...fleet.keys()].map((id) => ({ id, unavailable: [...offRoad(id, blocks)] })),
    hires: [...hires],
  };
  const { result, findings } = await asked.plan(input, SECONDS);
  // whoever proposes does not certify: the plan is looked at below, before it is shown
  const moved = new Map(result.moves.map(({ hire, to }) => [hire, to]));
  const gaps = (at: (row: HireRow) => string | null) =>
    countGaps({
      vehicles: [...fleet.keys()],
      held: [...rows.flatMap((row): Held[] => heldBy(row, at(row))), ...blocks],
      from: [span.start, now.toISOString()].sort().at(-1) ?? span.start,
      to: span.end,
      nights: NIGHTS,
      turnaroundMinutes,
    });
  const before = gaps(({ vehicleId }) => vehicleId);
  const after = gaps(({ id, vehicleId }) => moved.get(id) ?? vehicleId);
  const holds = findClash(
    rows.flatMap((row) => heldBy(row, moved.get(row.id) ?? row.vehicleId)),
    turnaroundMinutes,
  );
  if (holds !== null && result.refused.length === 0)
    throw new Error(`tidy: two hires on one vehicle: ${holds}`);
  const worth = after > before && result.refused.length === 0;
  return {
    moves: worth ? rows.flatMap((row) => moveOf(row, moved.get(row.id), depot.timeZone)) : [],
    nights: NIGHTS,
    before,
    after: worth ? after : before,
    bookings: rows.length,
    staying: hires.filter(({ fixed }) => fixed !== undefined).length,
    findings: findings.map(plainFinding),
  };
}

const heldBy = (row: HireRow, vehicleId: string | null): Held[] =>
  vehicleId === null ? [] : [{ vehicleId, from: row.from, to: row.to, isHire: true }];

const moveOf = (row: HireRow, to: string | undefined, timeZone: string): Tidy["moves"] =>
  to === undefined || row.vehicleId === null || to === row.vehicleId
    ? []
    : [
        {
          hireId: row.id,
          reference: row.number,
          customer: row.customerName,
          at: localOf(row.from, timeZone),
          from: row.vehicleId,
          to,
        },
      ];

async function bookedRows({ store, span }: Asked): Promise<readonly HireRow[]> {
  const rows = await store.hires.all({
    stages: ["booked", "handedOver", "onHire"],
    startsFrom: new Date(Date.parse(span.start) - LONGEST_MS).toISOString(),
    touchesTo: span.end,
    touchesFrom: span.start,
  });
  return rows.filter(({ vehicleId }) => vehicleId !== null);
}

const offRoad = (id: string, blocks: readonly BlockRow[]) =>
  blocks.filter(({ vehicleId }) => vehicleId === id).map(({ from, to }) => ({ from, to }));

async function asEngineHires(
  { store, depot, now }: Asked,
  rows: readonly HireRow[],
  fleet: ReadonlyMap<string, VehicleDocument>,
): Promise<readonly Engine[]> {
  const ids = rows.map(({ id }) => id);
  const pinned = await pinnedOf(store, ids);
  const parts = await store.hires.partsOf(ids, ["party"]);
  const mayServe = makeMayServe(fleet, dateOf(localOf(now.toISOString(), depot.timeZone)));
  const asEngine = (row: HireRow): Engine => {
    const here = row.vehicleId ?? "";
    const { id, from, to } = row;
    const party = parts.get(id)?.party;
    const stays =
      row.stage !== "booked" || row.from <= now.toISOString() || pinned.has(id) || party === undefined;
    if (stays) return { id, from, to, vehicles: [here], fixed: here, now: here, value: 1 };
    const can = mayServe(here, asDocument<Party>(party.document), localOf(to, depot.timeZone));
    return { id, from, to, vehicles: [...new Set([here, ...can])], now: here, value: 1 };
  };
  const breathe = makeBreathe();
  const engineHires: Engine[] = [];
  for (const row of rows) {
    await breathe();
    engineHires.push(asEngine(row));
  }
  return engineHires;
}

/** So long one piece of work may hold the thread before others are let in. */
const HOLD_MS = 25;

/** Gives the thread away for a moment whenever it was held long enough. */
function makeBreathe(): () => Promise<void> {
  let since = performance.now();
  return async () => {
    if (performance.now() - since < HOLD_MS) return;
    await new Promise((resolve) => setImmediate(resolve));
    since = performance.now();
  };
}

/**
 * Of the class that was quoted, those that fit the party and are in date; what else holds them is the planner's
 * business. Asked thousands of times about the same parties and days, so each answer is kept.
 */
function makeMayServe(fleet: ReadonlyMap<string, VehicleDocument>, today: string) {
  const kept = new Map<string, boolean>();
  const once = (key: string, ask: () => readonly Finding[]) => {
    const known = kept.get(key) ?? ask().every(({ severity }) => severity !== "refuse");
    kept.set(key, known);
    return known;
  };
  return (vehicleId: string, party: Party, to: string): readonly string[] => {
    const quoted = fleet.get(vehicleId)?.vehicleClass;
    const who = JSON.stringify(party);
    return [...fleet].flatMap(([id, { vehicleClass, description: vehicle, dueDates, maxDogs }]) => {
      if (vehicleClass !== quoted) return [];
      const fits = once(
        `${id} ${who}`,
        () => checkSeats({ vehicle, party, today, petPolicy: { maxDogs } }).findings,
      );
      const isInDate = () =>
        once(
          `${id} ${dateOf(to)}`,
          () => checkDueDates({ vehicle, dueDates: [...dueDates], to, today }).findings,
        );
      return fits && isInDate() ? [id] : [];
    });
  };
}
