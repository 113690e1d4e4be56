import type { YardModel } from "./yard-model.ts";

/** Units still free at resource × span + step while a schedule is built, with overtime and without. */
export interface Timeline {
  readonly model: YardModel;
  readonly free: Int32Array;
  readonly regularFree: Int32Array;
}

/** A timeline for a model; `clearTimeline` before each use. */
export const makeTimeline = (model: YardModel): Timeline => ({
  model,
  free: model.capacity.slice(),
  regularFree: model.hasOvertime ? model.regular.slice() : new Int32Array(0),
});

/** Frees everything. */
export function clearTimeline({ model, free, regularFree }: Timeline): void {
  free.set(model.capacity);
  if (model.hasOvertime) regularFree.set(model.regular);
}

/** Takes the units of a job (`sign` 1) or gives them back (-1). */
export function book({ model, free, regularFree }: Timeline, job: number, start: number, sign: number): void {
  const { span, resources, needs } = model;
  const end = start + model.length[job]!;
  for (const r of model.uses[job]!) {
    const units = sign * needs[job * resources + r]!;
    for (let at = r * span + start; at < r * span + end; at++) free[at]! -= units;
    if (model.hasOvertime)
      for (let at = r * span + start; at < r * span + end; at++) regularFree[at]! -= units;
  }
}

/** First start from `from` on at which a job fits; -1 where there is none. */
export function earliestFit(line: Timeline, job: number, from: number, regularOnly: boolean): number {
  const { span, resources, needs, uses } = line.model;
  const free = regularOnly ? line.regularFree : line.free;
  const length = line.model.length[job]!;
  let start = from;
  search: while (start + length <= span) {
    for (const r of uses[job]!) {
      const units = needs[job * resources + r]!;
      const base = r * span;
      for (let at = start + length - 1; at >= start; at--) {
        if (free[base + at]! >= units) continue;
        start = at + 1;
        continue search;
      }
    }
    return start;
  }
  return -1;
}

/** Last start at which a job fits and ends by `to`, no earlier than `from`, where it is known to fit. */
export function latestFit(line: Timeline, job: number, from: number, to: number): number {
  const { span, resources, needs, uses } = line.model;
  const length = line.model.length[job]!;
  let start = to - length;
  search: while (start > from) {
    for (const r of uses[job]!) {
      const units = needs[job * resources + r]!;
      const base = r * span;
      for (let at = start; at < start + length; at++) {
        if (line.free[base + at]! >= units) continue;
        start = at - length;
        continue search;
      }
    }
    return start;
  }
  return from;
}
