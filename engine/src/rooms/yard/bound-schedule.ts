import { earliestFit, makeTimeline } from "./timeline.ts";
import type { YardModel } from "./yard-model.ts";

/** What no schedule goes below, in minutes and weighted minutes. */
export interface ScheduleBounds {
  readonly finish: number;
  readonly lateness: number;
  /** earliest start of each job if it were alone, in steps */
  readonly head: Int32Array;
  /** least time from the end of each job to the finish, in steps */
  readonly tail: Int32Array;
}

/** Longest way through `after`, work that each resource must do, and jobs that cannot run side by side. */
export function boundSchedule(model: YardModel, order: Int32Array): ScheduleBounds {
  const head = headsOf(model, order);
  const tail = tailsOf(model, order);
  let finish = 0;
  let lateness = 0;
  for (let job = 0; job < model.jobs; job++) {
    const end = head[job]! + model.length[job]!;
    finish = Math.max(finish, end + tail[job]!);
    lateness += model.weight[job]! * Math.max(0, end * model.step - model.dueBy[job]!);
  }
  if (!model.hasShifts)
    finish = Math.max(finish, boundByWork(model, head, tail), boundByOneAtATime(model, head, tail));
  return { finish: finish * model.step, lateness, head, tail };
}

function headsOf(model: YardModel, order: Int32Array): Int32Array {
  const line = makeTimeline(model);
  const head = model.notBefore.slice();
  for (const job of order) {
    for (const before of model.before[job]!)
      head[job] = Math.max(head[job]!, head[before]! + model.length[before]!);
    const fits = earliestFit(line, job, head[job]!, false);
    if (fits >= 0) head[job] = fits;
  }
  return head;
}

function tailsOf(model: YardModel, order: Int32Array): Int32Array {
  const tail = new Int32Array(model.jobs);
  for (let k = order.length - 1; k >= 0; k--)
    for (const before of model.before[order[k]!]!)
      tail[before] = Math.max(tail[before]!, model.length[order[k]!]! + tail[order[k]!]!);
  return tail;
}

/** For each resource: the work of the jobs that start late and end early at the least, between those ends. */
function boundByWork(model: YardModel, head: Int32Array, tail: Int32Array): number {
  let bound = 0;
  const jobs = [...head.keys()];
  for (let r = 0; r < model.resources; r++) {
    const units = model.capacity[r * model.span]!;
    const need = (job: number) => model.needs[job * model.resources + r]! * model.length[job]!;
    const users = jobs.filter((job) => need(job) > 0).sort((a, b) => tail[b]! - tail[a]!);
    for (const from of new Set(users.map((job) => head[job]!))) {
      let work = 0;
      for (const job of users) {
        if (head[job]! < from) continue;
        work += need(job);
        bound = Math.max(bound, from + Math.ceil(work / units) + tail[job]!);
      }
    }
  }
  return bound;
}

/** Groups of which no two can run side by side: the sum of their lengths between the least head and the least tail. */
function boundByOneAtATime(model: YardModel, head: Int32Array, tail: Int32Array): number {
  if (model.jobs > 200) return 0;
  const apart = (a: number, b: number) => {
    if (head[a]! + model.length[a]! + tail[a]! === 0) return false;
    return [...model.uses[a]!].some(
      (r) =>
        model.needs[a * model.resources + r]! + model.needs[b * model.resources + r]! >
        model.capacity[r * model.span]!,
    );
  };
  const byLength = [...head.keys()].sort((a, b) => model.length[b]! - model.length[a]!);
  let bound = 0;
  for (const first of byLength) {
    const group = [first];
    for (const job of byLength) if (job !== first && group.every((each) => apart(job, each))) group.push(job);
    const sorted = group.sort((a, b) => head[a]! - head[b]!);
    for (let k = 0; k < sorted.length; k++) {
      const rest = sorted.slice(k).sort((a, b) => tail[b]! - tail[a]!);
      let sum = 0;
      for (const job of rest) {
        sum += model.length[job]!;
        bound = Math.max(bound, head[sorted[k]!]! + sum + tail[job]!);
      }
    }
  }
  return bound;
}
