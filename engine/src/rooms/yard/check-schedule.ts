import type { CheckSchedule, Schedule, ScheduledJob, ScheduleFault, ScheduleInput } from "./types.ts";

type Job = ScheduleInput["jobs"][number];

/**
 * Goes through a schedule against its input and names everything that does not hold: lengths, order, units at every
 * moment, and every sum. It shares only types with the planner.
 */
export const checkSchedule: CheckSchedule = (input, schedule) => {
  const jobs = new Map(input.jobs.map((job) => [job.id, job]));
  const placed = new Map(schedule.schedule.map((each) => [each.job, each]));
  return [
    ...checkPresence(input, schedule, jobs),
    ...schedule.schedule.flatMap((each) => checkTimes(each, jobs.get(each.job), placed)),
    ...input.resources.flatMap((resource) => checkUnits(resource, schedule.schedule, jobs)),
    ...checkSums(input, schedule, jobs),
  ];
};

const whole = (given: Job["minutes"]) => Math.ceil(typeof given === "object" ? given.p50 : given);

function checkPresence(
  input: ScheduleInput,
  schedule: Schedule,
  jobs: ReadonlyMap<string, Job>,
): ScheduleFault[] {
  const ids = [...schedule.schedule, ...schedule.unplaced].map(({ job }) => job);
  return [
    ...ids.filter((id) => !jobs.has(id)).map((job) => ({ code: "unknownJob", job })),
    ...input.jobs
      .filter(({ id }) => ids.filter((each) => each === id).length !== 1)
      .map(({ id }) => ({ code: "notOnce", job: id })),
  ];
}

function checkTimes(
  { job: id, start, end }: ScheduledJob,
  job: Job | undefined,
  placed: ReadonlyMap<string, ScheduledJob>,
): ScheduleFault[] {
  if (job === undefined) return [];
  const waits = job.after.every((each) => (placed.get(each)?.end ?? Number.POSITIVE_INFINITY) <= start);
  const wrong: readonly (readonly [string, boolean])[] = [
    ["length", end - start !== whole(job.minutes) || !Number.isInteger(start)],
    ["tooEarly", start < whole(job.notBefore)],
    ["beforeItsTurn", !waits],
  ];
  return wrong.filter(([, isWrong]) => isWrong).map(([code]) => ({ code, job: id }));
}

/** Units used less units there are, at every moment at which either changes. */
function checkUnits(
  { id, capacity }: ScheduleInput["resources"][number],
  schedule: readonly ScheduledJob[],
  jobs: ReadonlyMap<string, Job>,
): ScheduleFault[] {
  const holds = schedule
    .map(({ job, start, end }) => ({ start, end, units: jobs.get(job)?.needs[id] ?? 0 }))
    .filter(({ units, start, end }) => units > 0 && end > start);
  const shifts = typeof capacity === "number" ? [] : capacity;
  const moments = new Set([
    ...holds.map(({ start }) => start),
    ...shifts.flatMap(({ from, to }) => [from, to]),
  ]);
  const isOver = [...moments].some((at) => {
    const used = holds.reduce((sum, { start, end, units }) => sum + (start <= at && at < end ? units : 0), 0);
    const there =
      typeof capacity === "number"
        ? capacity
        : shifts.reduce((sum, { from, to, units }) => sum + (from <= at && at < to ? units : 0), 0);
    return used > there;
  });
  return isOver ? [{ code: "tooManyUnits", resource: id }] : [];
}

function checkSums(
  input: ScheduleInput,
  schedule: Schedule,
  jobs: ReadonlyMap<string, Job>,
): ScheduleFault[] {
  const finish = schedule.schedule.reduce((most, { end }) => Math.max(most, end), 0);
  const late = schedule.schedule.flatMap(({ job: id, end }) => {
    const job = jobs.get(id);
    return job?.dueBy === undefined || end <= job.dueBy ? [] : [{ job, minutes: end - job.dueBy }];
  });
  const weighted = late.reduce((sum, { job, minutes }) => sum + job.weight * minutes, 0);
  const told = schedule.late.map(({ job, minutes }) => `${job} ${minutes}`).sort();
  const overtime = input.resources.reduce(
    (sum, resource) => sum + recountOvertime(resource, schedule.schedule, jobs),
    0,
  );
  const wrong: readonly (readonly [string, boolean])[] = [
    ["finish", finish !== schedule.finish],
    ["lowerBound", schedule.unplaced.length === 0 && schedule.lowerBound > finish],
    [
      "late",
      late
        .map(({ job, minutes }) => `${job.id} ${minutes}`)
        .sort()
        .join() !== told.join(),
    ],
    ["weightedLateness", Math.abs(weighted - schedule.weightedLateness) > 1e-6 * Math.max(1, weighted)],
    ["overtimeUnitMinutes", overtime !== schedule.overtimeUnitMinutes],
  ];
  return wrong.filter(([, isWrong]) => isWrong).map(([code]) => ({ code }));
}

/** Unit-minutes above the regular units, from edge to edge. */
function recountOvertime(
  { id, capacity }: ScheduleInput["resources"][number],
  schedule: readonly ScheduledJob[],
  jobs: ReadonlyMap<string, Job>,
): number {
  if (typeof capacity === "number" || !capacity.some(({ overtime }) => overtime === true)) return 0;
  const edges = [
    ...new Set([
      ...schedule.flatMap(({ start, end }) => [start, end]),
      ...capacity.flatMap(({ from, to }) => [from, to]),
    ]),
  ].sort((a, b) => a - b);
  return edges.slice(1).reduce((sum, edge, k) => {
    const at = edges[k]!;
    const used = schedule.reduce(
      (total, { job, start, end }) => total + (start <= at && at < end ? (jobs.get(job)?.needs[id] ?? 0) : 0),
      0,
    );
    const regular = capacity.reduce(
      (total, { from, to, units, overtime }) =>
        total + (overtime !== true && from <= at && at < to ? units : 0),
      0,
    );
    return sum + Math.max(0, used - regular) * (edge - at);
  }, 0);
}
