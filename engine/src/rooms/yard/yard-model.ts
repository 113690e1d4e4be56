import { BadInput } from "../../base/bad-input.ts";
import type { ScheduleInput, Spread } from "./types.ts";

/** The input in whole steps of time, by index; a step is the greatest that divides every time that matters. */
export interface YardModel {
  readonly jobs: number;
  readonly resources: number;
  /** minutes of a step */
  readonly step: number;
  /** steps that are looked at */
  readonly span: number;
  readonly length: Int32Array;
  readonly notBefore: Int32Array;
  /** job × resources + resource */
  readonly needs: Int32Array;
  /** resources of which a job needs some */
  readonly uses: readonly Int32Array[];
  readonly before: readonly Int32Array[];
  readonly after: readonly Int32Array[];
  /** units at resource × span + step, with overtime and without */
  readonly capacity: Int32Array;
  readonly regular: Int32Array;
  readonly hasOvertime: boolean;
  readonly hasShifts: boolean;
  /** in minutes; Infinity where none */
  readonly dueBy: Float64Array;
  readonly weight: Float64Array;
  readonly forDay: boolean;
}

const MOST_CELLS = 20_000_000;

/** Whole minutes with which a duration or a time is planned. */
export const plannedMinutes = (given: number | Spread) =>
  Math.ceil(typeof given === "number" ? given : given.p50);

/** Turns a parsed input into numbers. @throws BadInput where it is too long to be laid out */
export function modelYard(input: ScheduleInput): YardModel {
  const { jobs, resources } = input;
  const minutes = jobs.map((job) => plannedMinutes(job.minutes));
  const starts = jobs.map((job) => plannedMinutes(job.notBefore));
  const edges = resources.flatMap(({ capacity }) =>
    typeof capacity === "number" ? [] : capacity.flatMap(({ from, to }) => [from, to]),
  );
  const hasOvertime = resources.some(
    ({ capacity }) => typeof capacity !== "number" && capacity.some(({ overtime }) => overtime === true),
  );
  // with overtime a job may be best begun so that it just ends when it is due
  const due = hasOvertime ? jobs.flatMap(({ dueBy }) => (Number.isInteger(dueBy) ? [dueBy!] : [])) : [];
  const step = [...minutes, ...starts, ...edges, ...due].reduce(greatestCommon, 0) || 1;
  const last = [...starts, ...edges].reduce((most, each) => Math.max(most, each), 0);
  const span = (last + minutes.reduce((sum, each) => sum + each, 0)) / step + 1;
  if (span * Math.max(1, resources.length) > MOST_CELLS)
    throw new BadInput([
      { path: "jobs", expected: `expected jobs of fewer minutes together than ${span * step}` },
    ]);
  const index = new Map(jobs.map(({ id }, k) => [id, k]));
  const before = jobs.map(({ after }) => Int32Array.from(new Set(after.map((id) => index.get(id)!))));
  const after = jobs.map((): number[] => []);
  before.forEach((list, job) => {
    for (const each of list) after[each]!.push(job);
  });
  return {
    jobs: jobs.length,
    resources: resources.length,
    step,
    span,
    length: Int32Array.from(minutes, (each) => each / step),
    notBefore: Int32Array.from(starts, (each) => each / step),
    ...needsOf(input),
    before,
    after: after.map((list) => Int32Array.from(list)),
    capacity: layOut(input, step, span, true),
    regular: layOut(input, step, span, false),
    hasOvertime,
    hasShifts: edges.length > 0,
    dueBy: Float64Array.from(jobs, ({ dueBy }) => dueBy ?? Number.POSITIVE_INFINITY),
    weight: Float64Array.from(jobs, ({ weight }) => weight),
    forDay: input.objective === "day",
  };
}

function greatestCommon(a: number, b: number): number {
  return b === 0 ? a : greatestCommon(b, a % b);
}

function needsOf({ jobs, resources }: ScheduleInput) {
  const needs = new Int32Array(jobs.length * resources.length);
  const uses = jobs.map((job, j) =>
    Int32Array.from(
      resources.flatMap(({ id }, r) => {
        const units = job.needs[id] ?? 0;
        needs[j * resources.length + r] = units;
        return units > 0 ? [r] : [];
      }),
    ),
  );
  return { needs, uses };
}

function layOut({ resources }: ScheduleInput, step: number, span: number, withOvertime: boolean): Int32Array {
  const units = new Int32Array(resources.length * span);
  resources.forEach(({ capacity }, r) => {
    if (typeof capacity === "number") units.fill(capacity, r * span, (r + 1) * span);
    else
      for (const shift of capacity) {
        if (shift.overtime === true && !withOvertime) continue;
        for (let t = shift.from / step; t < shift.to / step; t++)
          units[r * span + t] = units[r * span + t]! + shift.units;
      }
  });
  return units;
}
