import { type DayHours, hoursOn, proposeSchedule, type ScheduleInput } from "@setfair/engine";
import type { HireRow } from "../../store/types.ts";
import { crewOf } from "../crew.ts";
import { timesOf } from "../depot-times.ts";
import type { HireData } from "../hire-data.ts";
import { dateOf, localOf } from "../local-time.ts";
import { ALL_DAY } from "../opening-hours.ts";
import { openTurnarounds } from "../turnarounds.ts";
import { minutesOf } from "../yard-shifts.ts";
import { personOf } from "./next-hires.ts";
import { type Ask, line, NOTHING, type Planner } from "./types.ts";

type TeamAsk = Ask<"teamIll">;
type Job = ScheduleInput["jobs"][number];

interface Meeting {
  readonly row: HireRow;
  readonly kind: "out" | "back";
  /** civil time at which it is agreed */
  readonly at: string;
}
interface Day {
  readonly input: (without: string | null) => ScheduleInput;
  /** each handover and return by the id of its job */
  readonly meetings: ReadonlyMap<string, Meeting>;
  readonly jobs: number;
}

/** Someone of the team is ill: the day is put in time again with one less, and whom that makes late is rung in order. */
export const planTeamIll: Planner<"teamIll"> = async (ask) => {
  const { data, change } = ask;
  const day = await readDay(ask);
  const whole = endsOf(proposeSchedule(day.input(null)).result.schedule);
  const { result } = proposeSchedule(day.input(change.skill));
  const less = endsOf(result.schedule);
  const opens = minutesOf(hoursToday(data).opens);
  const moved = [...day.meetings].flatMap(([id, meeting]) => {
    const [was, is] = [whole.get(id), less.get(id)];
    if (is !== undefined && was !== undefined && is.end <= was.end) return [];
    const late = is === undefined ? null : is.end - (was?.end ?? is.end);
    return [{ ...meeting, late, start: is?.start ?? null }];
  });
  // the soonest is rung first: there is the least time to tell them
  const order = moved.sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
  const jobsLate = [...less].filter(
    ([id, { end }]) => !day.meetings.has(id) && end > (whole.get(id)?.end ?? end),
  );
  return {
    effects: {
      ...NOTHING,
      people: await Promise.all(
        order.map(({ row, kind, at, start, late }) =>
          personOf(
            ask,
            row,
            start === null
              ? line("doesNotFit", { kind, at })
              : line("movedTo", { kind, at, to: localAt(data.today, opens + start), minutes: late ?? 0 }),
          ),
        ),
      ),
      says: [
        line("dayAgain", { meetings: day.meetings.size, jobs: day.jobs, skill: change.skill }),
        line("yardLater", { count: jobsLate.length }),
        ...(result.unplaced.length === 0 ? [] : [line("unplaced", { count: result.unplaced.length })]),
        ...(order.length === 0 ? [line("dayHolds")] : []),
      ],
    },
    write: async () => ({}),
  };
};

const endsOf = (
  schedule: readonly { readonly job: string; readonly start: number; readonly end: number }[],
) => new Map(schedule.map(({ job, start, end }) => [job, { start, end }]));

const localAt = (day: string, minute: number): string =>
  `${day}T${String(Math.floor(minute / 60) % 24).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;

/** On a closed day whoever comes in may come at any time. */
const hoursToday = ({ depotDocument, today }: HireData): DayHours =>
  hoursOn(depotDocument.hours, today) ?? ALL_DAY;

/** Today's handovers and returns that are still to come, and what is left to do in the yard. */
async function readDay({ store, data, now }: TeamAsk): Promise<Day> {
  const { timeZone } = data.depot;
  const { opens, closes } = hoursToday(data);
  const start = Math.max(0, minutesOf(data.nowLocal.slice(11)) - minutesOf(opens));
  const shift = Math.max(start, minutesOf(closes) - minutesOf(opens));
  const at = (local: string) => Math.max(start, minutesOf(local.slice(11)) - minutesOf(opens));
  const rows = await store.hires.all({ stages: ["booked", "handedOver", "onHire"] });
  const isToday = (instant: string) => dateOf(localOf(instant, timeZone)) === data.today;
  const out = rows.filter(({ stage, from }) => stage === "booked" && isToday(from));
  const back = rows.filter(({ stage, to }) => stage !== "booked" && isToday(to));
  const open = await openTurnarounds(store, data.depot, now);
  const yard = open.flatMap(({ data: { row }, jobs, done }) => {
    const todo = jobs.filter(({ id }) => !done.has(id));
    const ids = new Set(todo.map(({ id }) => id));
    return todo.map(({ id, minutes, skill, after }): Job & { readonly vehicleId: string | null } => ({
      id: `${row.id} ${id}`,
      minutes,
      needs: { [skill]: 1 },
      after: after.filter((each) => ids.has(each)).map((each) => `${row.id} ${each}`),
      notBefore: start,
      weight: 1,
      vehicleId: row.vehicleId,
    }));
  });
  const times = timesOf(data.depotDocument);
  const meeting = (row: HireRow, kind: "out" | "back"): Job => {
    const local = localOf(kind === "out" ? row.from : row.to, timeZone);
    const minutes = kind === "out" ? times.handOverMinutes : times.takeBackMinutes;
    return {
      id: `${kind} ${row.id}`,
      minutes,
      needs: { desk: 1 },
      after:
        kind === "out" ? yard.filter(({ vehicleId }) => vehicleId === row.vehicleId).map(({ id }) => id) : [],
      notBefore: at(local),
      dueBy: at(local) + minutes,
      weight: 10,
    };
  };
  const meetings = [...out.map((row) => meeting(row, "out")), ...back.map((row) => meeting(row, "back"))];
  return {
    jobs: yard.length,
    meetings: new Map<string, Meeting>([
      ...out.map(
        (row) => [`out ${row.id}`, { row, kind: "out" as const, at: localOf(row.from, timeZone) }] as const,
      ),
      ...back.map(
        (row) => [`back ${row.id}`, { row, kind: "back" as const, at: localOf(row.to, timeZone) }] as const,
      ),
    ]),
    input: (without) => ({
      objective: "day",
      resources: Object.entries(crewOf(data.depotDocument)).map(([id, units]) => ({
        id,
        capacity: [
          {
            from: start,
            to: Math.max(start + 1, shift),
            units: id === without ? Math.max(0, units - 1) : units,
          },
        ],
      })),
      jobs: [...meetings, ...yard.map(({ vehicleId: _, ...job }) => job)],
    }),
  };
}
