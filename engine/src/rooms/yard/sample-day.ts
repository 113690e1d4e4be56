import { keyedNormal, purposeKey } from "../../base/random.ts";
import type { ScheduledJob, ScheduleInput, Spread } from "./types.ts";

/** p90 of the standard normal distribution */
const Z90 = 1.2815515655446004;
const RUNS = 500;
const LENGTH = purposeKey("yard.minutes");
const READY = purposeKey("yard.notBefore");

type Job = ScheduleInput["jobs"][number];

/** Whether any length or any earliest start is uncertain. */
export const hasSpread = ({ jobs }: ScheduleInput) =>
  jobs.some(({ minutes, notBefore }) => typeof minutes === "object" || typeof notBefore === "object");

/**
 * How likely each `dueBy` is kept when the day is lived many times: lengths and earliest starts are drawn (normal on
 * either side of p50, through p10 and p90, never below 0), and each job starts as soon as it may, its units are there
 * and every job that was planned before it on the same resource has started.
 */
export function sampleDay(input: ScheduleInput, plan: readonly ScheduledJob[], seed: number) {
  const jobs = new Map(input.jobs.map((job, k) => [job.id, { job, k }]));
  const planned = plan.map(({ job }) => jobs.get(job)!);
  const kept = new Map<string, number>();
  for (let run = 0; run < RUNS; run++) {
    const ends = liveDay(input, planned, (given, k, purpose) => drawFrom(given, seed, run, k, purpose));
    for (const { job } of planned)
      if (job.dueBy !== undefined && (ends.get(job.id) ?? Number.POSITIVE_INFINITY) <= job.dueBy + 1e-9)
        kept.set(job.id, (kept.get(job.id) ?? 0) + 1);
  }
  return input.jobs.flatMap(({ id, dueBy }) =>
    dueBy === undefined ? [] : [{ job: id, dueBy, chance: (kept.get(id) ?? 0) / RUNS }],
  );
}

function drawFrom(given: number | Spread, seed: number, run: number, k: number, purpose: number): number {
  if (typeof given === "number") return given;
  const z = keyedNormal(seed, run, k, purpose);
  const side = z < 0 ? given.p50 - given.p10 : given.p90 - given.p50;
  return Math.max(0, given.p50 + (z / Z90) * side);
}

/** The ends of the jobs on one day, in the planned order at each resource. */
function liveDay(
  { resources }: ScheduleInput,
  planned: readonly { readonly job: Job; readonly k: number }[],
  draw: (given: number | Spread, k: number, purpose: number) => number,
): ReadonlyMap<string, number> {
  const ends = new Map<string, number>();
  const lastStart = new Map<string, number>();
  const held = new Map<string, { start: number; end: number; units: number }[]>();
  for (const { job, k } of planned) {
    const length = draw(job.minutes, k, LENGTH);
    const needs = resources.filter(({ id }) => (job.needs[id] ?? 0) > 0);
    const from = Math.max(
      draw(job.notBefore, k, READY),
      ...job.after.map((id) => ends.get(id) ?? Number.POSITIVE_INFINITY),
      ...needs.map(({ id }) => lastStart.get(id) ?? 0),
    );
    const start = length === 0 ? from : firstRoom(from, needs, job, held);
    ends.set(job.id, start + length);
    if (start === Number.POSITIVE_INFINITY) continue;
    for (const { id } of needs) {
      lastStart.set(id, start);
      held.set(id, [
        ...(held.get(id) ?? []).filter(({ end }) => end > start),
        { start, end: start + length, units: job.needs[id]! },
      ]);
    }
  }
  return ends;
}

/** First moment from `from` on at which the units of a job are there; work under way at the end of a shift is finished. */
function firstRoom(
  from: number,
  needs: readonly ScheduleInput["resources"][number][],
  job: Job,
  held: ReadonlyMap<
    string,
    readonly { readonly start: number; readonly end: number; readonly units: number }[]
  >,
): number {
  const moments = needs.flatMap(({ id, capacity }) => [
    ...(held.get(id) ?? []).map(({ end }) => end),
    ...(typeof capacity === "number" ? [] : capacity.map(({ from: shift }) => shift)),
  ]);
  const hasRoom = (at: number) =>
    needs.every(({ id, capacity }) => {
      const used = (held.get(id) ?? []).reduce((sum, { end, units }) => sum + (end > at ? units : 0), 0);
      const there =
        typeof capacity === "number"
          ? capacity
          : capacity.reduce((sum, shift) => sum + (shift.from <= at && at < shift.to ? shift.units : 0), 0);
      return used + job.needs[id]! <= there;
    });
  if (from === Number.POSITIVE_INFINITY) return from;
  const tried = [from, ...moments.filter((at) => at > from).sort((a, b) => a - b)];
  return tried.find(hasRoom) ?? Number.POSITIVE_INFINITY;
}
