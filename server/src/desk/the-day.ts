import type { OpeningHours } from "@setfair/engine";
import type { z } from "zod";
import type { todaySchema } from "../api/schemas/today.ts";
import type { HireRow, HireStage, Store } from "../store/types.ts";
import { doneBy } from "./done-by.ts";
import type { HireSummary } from "./summary.ts";

type Blocker = z.input<typeof todaySchema>["blockers"][number];

const ROAD = ["handedOver", "onHire"] as const satisfies readonly HireStage[];
/** Stages in which a vehicle went, goes or will go. */
const REAL = ["booked", ...ROAD, "returned", "settled", "closed"] as const satisfies readonly HireStage[];
const isReal = ({ stage }: HireRow) => (REAL as readonly string[]).includes(stage);
const isOnRoad = ({ stage }: HireRow) => (ROAD as readonly string[]).includes(stage);
/** No hire is longer (`checkPeriod`), so none that touches a day began before. */
const LONGEST_DAYS = 367;

export interface AskedDay {
  /** instants of its midnight and of the next */
  readonly start: string;
  readonly end: string;
  readonly isToday: boolean;
}
export interface DayRows {
  readonly out: readonly HireRow[];
  readonly back: readonly HireRow[];
  readonly road: readonly HireRow[];
}

/** The hires of a day, each query along an index of its own. Today also has what should have gone or come before. */
export async function readDay(store: Store, { start, end, isToday }: AskedDay): Promise<DayRows> {
  const starting = await store.hires.all({ stages: REAL, startsFrom: start, touchesTo: end });
  const ending = (await store.hires.ending(start, end)).filter(isReal);
  if (!isToday) return { out: starting, back: ending, road: await touching(store, start, end) };
  const notGone = await store.hires.all({ stages: ["booked"], touchesTo: start });
  const away = await store.hires.all({ stages: ROAD });
  const road = away.filter((row) => row.to >= end);
  const late = away.filter((row) => row.to < start);
  return { out: [...notGone, ...starting], back: [...late, ...ending], road };
}

/** Away the whole day, as far as it is known now. */
async function touching(store: Store, start: string, end: string): Promise<readonly HireRow[]> {
  const earliest = new Date(Date.parse(start) - LONGEST_DAYS * 86_400_000).toISOString();
  const rows = await store.hires.all({
    stages: REAL,
    startsFrom: earliest,
    touchesTo: start,
    touchesFrom: end,
  });
  return rows.filter((row) => isOnRoad(row) || row.stage !== "returned");
}

const WORST_FIRST = ["cannotGo", "late", "notYet"] as const;

export interface DayLines {
  readonly out: readonly HireSummary[];
  readonly back: readonly HireSummary[];
  /** civil time now */
  readonly now: string;
  readonly turnaroundMinutes: number;
  /** when people work there */
  readonly hours: OpeningHours;
}

/** What holds the day up, worst first, then by time: what cannot go, what is late, what is not ready yet. */
export function blockersOf({ out, back, now, turnaroundMinutes, hours }: DayLines): readonly Blocker[] {
  const held = out.flatMap((hire): Ranked[] =>
    hire.glass === "cannotGo" || hire.glass === "notYet"
      ? [{ rank: hire.glass, at: hire.from, blocker: plain(hire, "glass", minutesBetween(hire.from, now)) }]
      : [],
  );
  const late = back.flatMap((hire): Ranked[] => {
    if (hire.late !== "back") return [];
    const next = nextOf(hire, out);
    const blocker = {
      ...plain(hire, "late", minutesBetween(hire.to, now)),
      next: next === undefined ? null : { hireId: next.id, customer: next.customer, from: next.from },
      // at the soonest, were it to come back this minute
      readyAt: next === undefined ? null : doneBy(now, turnaroundMinutes, hours),
    };
    return [{ rank: "late", at: hire.to, blocker }];
  });
  return [...held, ...late]
    .sort((a, b) => WORST_FIRST.indexOf(a.rank) - WORST_FIRST.indexOf(b.rank) || (a.at < b.at ? -1 : 1))
    .map(({ blocker }) => blocker);
}

interface Ranked {
  readonly rank: (typeof WORST_FIRST)[number];
  readonly at: string;
  readonly blocker: Blocker;
}

const plain = (hire: HireSummary, why: Blocker["why"], lateMinutes: number): Blocker => ({
  hireId: hire.id,
  hire,
  why,
  lateMinutes: Math.max(0, lateMinutes),
  next: null,
  readyAt: null,
});

/** Who waits for the same vehicle on the same day. */
const nextOf = (hire: HireSummary, out: readonly HireSummary[]) =>
  out.find(
    ({ id, vehicle, stage }) => id !== hire.id && stage === "booked" && vehicle?.id === hire.vehicle?.id,
  );

const minutesBetween = (from: string, to: string) =>
  Math.round((Date.parse(`${to}Z`) - Date.parse(`${from}Z`)) / 60_000);
