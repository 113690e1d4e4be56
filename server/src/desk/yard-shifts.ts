import { addDays, hoursOn, type OpeningHours, proposeSchedule, type ScheduleInput } from "@setfair/engine";

type Shift = Exclude<ScheduleInput["resources"][number]["capacity"], number>[number];

const DAY_MIN = 24 * 60;
/** open days that are planned ahead, and days that are looked through for them */
const OPEN_DAYS = 3;
const LOOK_DAYS = 14;
/** how long people stay after closing where a vehicle would not be ready otherwise: common practice, no source */
const STAY_MIN = 3 * 60;
/** nobody begins to the minute: times are told in fives */
const ROUND_MIN = 5;

/** Minutes of the day of a civil time `HH:MM`, 0 to 1,440. */
export const minutesOf = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));

/** Minutes from the midnight before `today` to a civil time `YYYY-MM-DDTHH:MM`; clock changes are left out. */
export const minutesFrom = (today: string, local: string): number =>
  Math.round((Date.parse(`${local.slice(0, 10)}T00:00Z`) - Date.parse(`${today}T00:00Z`)) / 60_000) +
  minutesOf(local.slice(11));

/** The civil time so many minutes from the midnight before `today`. */
function localAfter(today: string, minutes: number): string {
  const days = Math.floor(minutes / DAY_MIN);
  const at = minutes - days * DAY_MIN;
  const two = (value: number) => String(value).padStart(2, "0");
  return `${addDays(today, days)}T${two(Math.floor(at / 60))}:${two(at % 60)}`;
}

/** The soonest that anybody begins a job, minutes from midnight. */
export const beginsFrom = (nowLocal: string): number =>
  Math.ceil(minutesOf(nowLocal.slice(11)) / ROUND_MIN) * ROUND_MIN;

/**
 * When `units` people of the yard are there, in minutes from the midnight that begins `today`: the opening hours of the
 * next open days, today's among them unless they are over, and after closing as overtime, for what would be late
 * otherwise. Empty where the depot is closed for the next fortnight.
 */
function shiftsOf(hours: OpeningHours, nowLocal: string, units: number): Shift[] {
  const today = nowLocal.slice(0, 10);
  const now = beginsFrom(nowLocal);
  return Array.from({ length: LOOK_DAYS }, (_, day) => ({ day, open: hoursOn(hours, addDays(today, day)) }))
    .flatMap(({ day, open }) => {
      if (open === null) return [];
      const at = (time: string) => day * DAY_MIN + minutesOf(time);
      const [from, to] = [at(open.opens), at(open.closes)];
      const until = Math.min(to + STAY_MIN, (day + 1) * DAY_MIN);
      return until <= now ? [] : [{ from, to, until }];
    })
    .slice(0, OPEN_DAYS)
    .flatMap(({ from, to, until }) => [
      { from, to, units },
      ...(until > to ? [{ from: to, to: until, units, overtime: true }] : []),
    ]);
}

/**
 * Civil time at which each job is proposed to begin, by its id, in the hours in which people are there; `notBefore` and
 * `dueBy` count from the midnight before today. What has no room has no time, nor has anything where the depot is
 * closed for the next fortnight.
 * @param crew people by skill
 */
export function startsOf(
  jobs: ScheduleInput["jobs"],
  crew: Readonly<Record<string, number>>,
  hours: OpeningHours,
  nowLocal: string,
): ReadonlyMap<string, string> {
  const resources = Object.entries(crew).map(([id, units]) => ({
    id,
    capacity: shiftsOf(hours, nowLocal, units),
  }));
  if (resources.every(({ capacity }) => capacity.length === 0)) return new Map();
  const { result } = proposeSchedule({ objective: "day", resources, jobs });
  return new Map(result.schedule.map(({ job, start }) => [job, localAfter(nowLocal.slice(0, 10), start)]));
}
