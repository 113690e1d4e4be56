import { overtimeOf } from "./judge-schedule.ts";
import { book, clearTimeline, earliestFit, type Timeline } from "./timeline.ts";

/**
 * The schedule with less overtime, where jobs that start later bring that: every job as late as it may end without
 * being later than it is or than it is due, the last first, then as early as that gains nothing back. Null where
 * nothing is gained. `line` is used.
 */
export function slideFromOvertime(line: Timeline, given: Int32Array): Int32Array | null {
  const { model } = line;
  if (!model.hasOvertime || overtimeOf(model, given) === 0) return null;
  const start = given.slice();
  clearTimeline(line);
  const placed = [...start.keys()].filter((job) => start[job]! >= 0);
  for (const job of placed) book(line, job, start[job]!, 1);
  const finish = placed.reduce((most, job) => Math.max(most, start[job]! + model.length[job]!), 0);
  const move = (job: number, to: () => number) => {
    book(line, job, start[job]!, -1);
    start[job] = to();
    book(line, job, start[job]!, 1);
  };
  // of jobs that start together those that wait go first, as in `justify`
  placed.sort((a, b) => start[b]! + model.length[b]! - start[a]! - model.length[a]! || start[b]! - start[a]!);
  for (const job of placed) move(job, () => lateStart(line, start, job, finish));
  placed.sort((a, b) => start[a]! - start[b]! || model.length[a]! - model.length[b]!);
  for (const job of placed) move(job, () => earlyStart(line, start, job));
  return overtimeOf(model, start) < overtimeOf(model, given) ? start : null;
}

/** The last of the starts with the least overtime at which a job, not booked, ends in time. */
function lateStart(line: Timeline, start: Int32Array, job: number, finish: number): number {
  const { model } = line;
  const length = model.length[job]!;
  const due = model.forDay ? Math.min(model.span, Math.floor(model.dueBy[job]! / model.step)) : finish;
  let latest = Math.max(start[job]! + length, due);
  for (const next of model.after[job]!) if (start[next]! >= 0) latest = Math.min(latest, start[next]!);
  let best = start[job]!;
  let least = overtimeAt(line, job, best);
  for (let at = best; ; ) {
    at = earliestFit(line, job, at + 1, false);
    if (at < 0 || at + length > latest) return best;
    const cost = overtimeAt(line, job, at);
    if (cost <= least) [best, least] = [at, cost];
  }
}

/** The first start of a job, not booked, with no more overtime than where it stands. */
function earlyStart(line: Timeline, start: Int32Array, job: number): number {
  const { model } = line;
  let at = model.notBefore[job]!;
  for (const before of model.before[job]!) at = Math.max(at, start[before]! + model.length[before]!);
  const most = overtimeAt(line, job, start[job]!);
  for (;;) {
    at = earliestFit(line, job, at, false);
    if (at < 0 || at >= start[job]!) return start[job]!;
    if (overtimeAt(line, job, at) <= most) return at;
    at++;
  }
}

/** Unit-steps above the regular units that the job would add there. */
function overtimeAt({ model, regularFree }: Timeline, job: number, start: number): number {
  const { span, resources, needs } = model;
  let sum = 0;
  for (const r of model.uses[job]!)
    for (let at = r * span + start; at < r * span + start + model.length[job]!; at++) {
      const left = regularFree[at]!;
      sum += Math.max(0, needs[job * resources + r]! - left) - Math.max(0, -left);
    }
  return sum;
}
