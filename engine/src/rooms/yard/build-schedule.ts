import { book, clearTimeline, earliestFit, latestFit, type Timeline } from "./timeline.ts";

/**
 * Starts jobs one after another in the order of a list, each as early as it fits; -1 where one does not fit or waits for
 * one that does not.
 * @param noOvertime - 1 where a job keeps to regular units if it can; null where overtime is not told apart
 */
export function buildByList(
  line: Timeline,
  list: Int32Array,
  noOvertime: Uint8Array | null,
  start: Int32Array,
): void {
  const { model } = line;
  clearTimeline(line);
  for (const job of list) {
    let from = model.notBefore[job]!;
    for (const before of model.before[job]!) {
      const end = start[before]! < 0 ? Number.POSITIVE_INFINITY : start[before]! + model.length[before]!;
      if (end > from) from = end;
    }
    if (from > model.span) {
      start[job] = -1;
      continue;
    }
    let at = noOvertime !== null && noOvertime[job] === 1 ? earliestFit(line, job, from, true) : -1;
    if (at < 0) at = earliestFit(line, job, from, false);
    start[job] = at;
    if (at >= 0) book(line, job, at, 1);
  }
}

/**
 * Moves every job as late as it goes without a later finish, then every job as early as it goes: no finish becomes
 * later, and most become sooner (Valls, Ballestín and Quintanilla, European Journal of Operational Research 165 (2005)
 * 375-386, from memory). `line` holds the schedule, all jobs are placed.
 */
export function justify(line: Timeline, start: Int32Array, list: Int32Array): void {
  const { model } = line;
  const { length } = model;
  let finish = 0;
  for (let job = 0; job < model.jobs; job++) finish = Math.max(finish, start[job]! + length[job]!);
  for (let k = 0; k < list.length; k++) list[k] = k;
  list.sort((a, b) => start[b]! + length[b]! - start[a]! - length[a]! || start[b]! - start[a]!);
  // a job of no length may end with one that waits for it: those that wait go first
  for (const job of list) {
    let to = finish;
    for (const next of model.after[job]!) to = Math.min(to, start[next]!);
    book(line, job, start[job]!, -1);
    start[job] = latestFit(line, job, start[job]!, to);
    book(line, job, start[job]!, 1);
  }
  list.sort((a, b) => start[a]! - start[b]! || length[a]! - length[b]!);
  for (const job of list) {
    let from = model.notBefore[job]!;
    for (const before of model.before[job]!) from = Math.max(from, start[before]! + length[before]!);
    book(line, job, start[job]!, -1);
    start[job] = earliestFit(line, job, from, false);
    book(line, job, start[job]!, 1);
  }
}
