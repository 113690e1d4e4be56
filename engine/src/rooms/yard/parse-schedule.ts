import { BadInput, type InputProblem, parseWith } from "../../base/bad-input.ts";
import { repeatedIds } from "../../base/repeated-ids.ts";
import { type ScheduleInput, scheduleInputSchema } from "./types.ts";

type Job = ScheduleInput["jobs"][number];

/**
 * Checks what a schema cannot: ids, references, spreads in order, rings of `after`, and needs that no moment can meet.
 * @throws BadInput that names every field
 */
export function parseSchedule(value: unknown): ScheduleInput {
  const input = parseWith(scheduleInputSchema, value);
  const most = new Map(input.resources.map(({ id, capacity }) => [id, mostAtOnce(capacity)]));
  const known = new Set(input.jobs.map(({ id }) => id));
  const problems = [
    ...repeatedIds("resources", input.resources),
    ...repeatedIds("jobs", input.jobs),
    ...input.resources.flatMap(({ capacity }, k) =>
      typeof capacity === "number"
        ? []
        : capacity.flatMap(({ from, to }, at) =>
            to > from
              ? []
              : [{ path: `resources.${k}.capacity.${at}.to`, expected: `expected more than ${from}` }],
          ),
    ),
    ...input.jobs.flatMap((job, k) => jobProblems(job, `jobs.${k}`, most, known)),
  ];
  if (problems.length > 0) throw new BadInput(problems);
  const ring = findRing(input.jobs);
  if (ring.length > 0) throw new BadInput(ring);
  return input;
}

/** The most units that a resource has at any moment. */
function mostAtOnce(capacity: ScheduleInput["resources"][number]["capacity"]): number {
  if (typeof capacity === "number") return capacity;
  const at = (minute: number) =>
    capacity.reduce((sum, { from, to, units }) => sum + (from <= minute && minute < to ? units : 0), 0);
  return capacity.reduce((most, { from }) => Math.max(most, at(from)), 0);
}

function jobProblems(
  job: Job,
  path: string,
  most: ReadonlyMap<string, number>,
  known: ReadonlySet<string>,
): InputProblem[] {
  const spreads = (["minutes", "notBefore"] as const).flatMap((field) => {
    const given = job[field];
    return typeof given === "number" || (given.p10 <= given.p50 && given.p50 <= given.p90)
      ? []
      : [{ path: `${path}.${field}`, expected: "expected p10 ≤ p50 ≤ p90" }];
  });
  const needs = Object.entries(job.needs).flatMap(([id, units]): InputProblem[] => {
    const limit = most.get(id);
    if (limit === undefined)
      return [{ path: `${path}.needs.${id}`, expected: `expected the id of a resource, "${id}" is none` }];
    return units <= limit
      ? []
      : [{ path: `${path}.needs.${id}`, expected: `expected at most ${limit}, the most there ever are` }];
  });
  const after = job.after.flatMap((id, k) =>
    known.has(id)
      ? []
      : [{ path: `${path}.after.${k}`, expected: `expected the id of a job, "${id}" is none` }],
  );
  return [...spreads, ...needs, ...after];
}

/** Jobs that wait for themselves, by way of others. */
function findRing(jobs: readonly Job[]): InputProblem[] {
  const left = new Map(jobs.map((job, k) => [job.id, { job, k }]));
  for (let isMoving = true; isMoving; ) {
    isMoving = false;
    for (const [id, { job }] of left) {
      if (job.after.some((before) => left.has(before))) continue;
      left.delete(id);
      isMoving = true;
    }
  }
  return [...left.values()]
    .filter(({ job }) => job.after.some((before) => left.has(before)))
    .map(({ job, k }) => ({
      path: `jobs.${k}.after`,
      expected: `expected no ring, "${job.id}" waits for itself by way of ${job.after.filter((id) => left.has(id)).join(", ")}`,
    }));
}
