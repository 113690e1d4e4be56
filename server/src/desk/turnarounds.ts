import {
  addDays,
  composeTurnaround,
  type Difference,
  type Mending,
  type TurnaroundJob,
} from "@setfair/engine";
import type { z } from "zod";
import type { turnaroundSchema } from "../api/schemas/upkeep.ts";
import type { DepotRow, Store } from "../store/types.ts";
import { conditionOf } from "./after-hire.ts";
import { crewOf } from "./crew.ts";
import { timesOf } from "./depot-times.ts";
import { asDocument, type DepotDocument, NO_SETTLEMENT } from "./documents.ts";
import { type HireData, partOf, readRows } from "./hire-data.ts";
import { dateOf, localOf } from "./local-time.ts";
import { walkFacts, wholeRecords } from "./record-facts.ts";
import { beginsFrom, minutesFrom, startsOf } from "./yard-shifts.ts";

type Turnaround = z.input<typeof turnaroundSchema>;
export interface OpenTurnaround {
  readonly data: HireData;
  readonly jobs: readonly TurnaroundJob[];
  readonly done: ReadonlySet<string>;
  readonly nextOut: string | null;
}

/** A vehicle back longer ago than this is taken as turned round, whatever the list says. */
const LOOK_BACK_DAYS = 3;
/** what goes out later than this is no haste yet, minutes from the midnight before today */
const DUE_WITHIN_MIN = 7 * 24 * 60;
const BACK: readonly string[] = ["returned", "settled", "closed"];
/** Chain of the records of a turnaround; each job done is a `look` with the job's id. */
export const turnaroundChain = (hireId: string): string => `${hireId}.turnaround`;

/** Vehicles that came back in the last days and are not out again, with what is to be done to each and when. */
export async function readTurnarounds(store: Store, depot: DepotRow, now: Date): Promise<Turnaround[]> {
  const open = await openTurnarounds(store, depot, now);
  return planned(open, asDocument<DepotDocument>(depot.document), localOf(now.toISOString(), depot.timeZone));
}

/** Likewise without putting the jobs in time. */
export async function openTurnarounds(
  store: Store,
  depot: DepotRow,
  now: Date,
): Promise<readonly OpenTurnaround[]> {
  const nowLocal = localOf(now.toISOString(), depot.timeZone);
  const today = dateOf(nowLocal);
  const rows = await store.hires.all({
    stages: ["booked", "handedOver", "onHire", "returned", "settled", "closed"],
    touchesFrom: `${addDays(today, -LOOK_BACK_DAYS)}T00:00:00.000Z`,
  });
  const isAway = new Set(
    rows
      .filter(({ stage }) => stage === "onHire" || stage === "handedOver")
      .map(({ vehicleId }) => vehicleId),
  );
  const lastBack = new Map(
    rows
      .filter(({ stage, vehicleId }) => BACK.includes(stage) && vehicleId !== null && !isAway.has(vehicleId))
      .sort((a, b) => (a.to < b.to ? -1 : 1))
      .map((row) => [row.vehicleId, row] as const),
  );
  const back = await readRows(store, [...lastBack.values()], depot, now);
  const open: OpenTurnaround[] = [];
  for (const data of back) {
    if (data.vehicle === null) continue;
    const next = rows
      .filter(
        ({ stage, vehicleId, from }) =>
          stage === "booked" && vehicleId === data.row.vehicleId && from >= data.row.to,
      )
      .map(({ from }) => from)
      .sort()[0];
    open.push({
      data,
      jobs: composeTurnaround(
        data.vehicle.document.description,
        await differencesOf(store, data),
        decidedOf(data),
        timesOf(asDocument<DepotDocument>(depot.document)).jobMinutes,
      ),
      done: doneOf(data),
      nextOut: next === undefined ? null : localOf(next, depot.timeZone),
    });
  }
  return open;
}

async function differencesOf(store: Store, data: HireData): Promise<readonly Difference[]> {
  if (!walkFacts(data.records, "back").finished) return [];
  return (await conditionOf(store, data)).result.differences;
}

/** What the desk decided is to be done about each difference. */
function decidedOf(data: HireData): Record<string, Mending | undefined> {
  const { classes } = partOf(data, "settlement") ?? NO_SETTLEMENT;
  return Object.fromEntries(Object.entries(classes).map(([id, { todo }]) => [id, todo ?? undefined]));
}

function doneOf({ records, row }: HireData): ReadonlySet<string> {
  const own = wholeRecords(records).filter(
    ({ kind, chain, content }) =>
      kind === "look" && chain === turnaroundChain(row.id) && content.saw === "done",
  );
  return new Set(own.map(({ content }) => String(content.job)));
}

/** One order for the whole yard, in the hours in which people are there: what goes out first is ready first. */
function planned(open: readonly OpenTurnaround[], depot: DepotDocument, nowLocal: string): Turnaround[] {
  const today = dateOf(nowLocal);
  const start = beginsFrom(nowLocal);
  // the vehicle is to be ready before the keys' hour begins
  const { handOverMinutes } = timesOf(depot);
  const jobs = open.flatMap(({ data, jobs: all, done, nextOut }) => {
    const todo = all.filter(({ id }) => !done.has(id));
    const ids = new Set(todo.map(({ id }) => id));
    const goesToday = nextOut !== null && dateOf(nextOut) === today;
    const due = nextOut === null ? null : minutesFrom(today, nextOut) - handOverMinutes;
    return todo.map(({ id, minutes, skill, after }) => ({
      id: `${data.row.id} ${id}`,
      minutes,
      needs: { [skill]: 1 },
      after: after.filter((each) => ids.has(each)).map((each) => `${data.row.id} ${each}`),
      notBefore: start,
      weight: goesToday ? 10 : 1,
      ...(due === null || due > DUE_WITHIN_MIN ? {} : { dueBy: Math.max(0, due) }),
    }));
  });
  const { desk: _, ...yard } = crewOf(depot);
  const starts = startsOf(jobs, yard, depot.hours, nowLocal);
  return open
    .map(({ data, jobs: all, done, nextOut }) => ({
      id: turnaroundChain(data.row.id),
      hireId: data.row.id,
      reference: data.row.number,
      vehicle: {
        id: data.row.vehicleId ?? "",
        name: data.vehicle?.document.description.name ?? "",
        registration: data.vehicle?.document.description.registration ?? "",
      },
      backAt: data.to,
      nextOut,
      ready: all.every(({ id }) => done.has(id)),
      jobs: all.map(({ id, code, minutes, skill }) => ({
        id,
        code,
        minutes,
        skill,
        done: done.has(id),
        start: done.has(id) ? null : (starts.get(`${data.row.id} ${id}`) ?? null),
      })),
    }))
    .sort((a, b) => (a.nextOut ?? "9999").localeCompare(b.nextOut ?? "9999"));
}
