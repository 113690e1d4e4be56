import { spend } from "../../base/budget.ts";
import { drawsFor } from "../../base/draws.ts";
import { figure } from "../../base/figure.ts";
import { makeFinding } from "../make-finding.ts";
import { checkSchedule } from "./check-schedule.ts";
import { findSchedule } from "./find-schedule.ts";
import { finishOf, latenessOf, overtimeOf } from "./judge-schedule.ts";
import { parseSchedule } from "./parse-schedule.ts";
import { hasSpread, sampleDay } from "./sample-day.ts";
import { earliestFit, makeTimeline } from "./timeline.ts";
import type { ProposeSchedule, Schedule, ScheduleInput, UnplacedWhy } from "./types.ts";
import { modelYard, type YardModel } from "./yard-model.ts";

/**
 * Puts jobs in time: all done as early as possible, or the day with least weighted lateness, then least overtime. Every
 * answer has been through {@link checkSchedule}; one that does not hold is a bug and throws.
 * @throws BadInput that names each field
 */
export const proposeSchedule: ProposeSchedule = (given, budget = {}) => {
  const input = parseSchedule(given);
  const model = modelYard(input);
  const seed = budget.seed ?? 1;
  const found = findSchedule(model, {
    draw: drawsFor(seed, "yard"),
    isOver: spend(budget, 300),
    ...(budget.onProgress === undefined ? {} : { onProgress: budget.onProgress }),
  });
  const schedule = writeSchedule(input, model, found.start, found.bounds.finish);
  const faults = checkSchedule(input, schedule);
  if (faults.length > 0)
    throw new Error(`yard: the schedule does not hold: ${JSON.stringify(faults.slice(0, 5))}`);
  return {
    result: {
      ...schedule,
      proven: found.proven,
      ...(hasSpread(input) ? { chances: sampleDay(input, schedule.schedule, seed) } : {}),
      milliseconds: Math.round(budget.elapsedMs?.() ?? 0),
    },
    findings: findingsOf(schedule),
  };
};

function writeSchedule(input: ScheduleInput, model: YardModel, start: Int32Array, bound: number): Schedule {
  const { step } = model;
  const rows = input.jobs.map((job, k) => ({ job, k, at: start[k]! }));
  const placed = rows.filter(({ at }) => at >= 0).sort((a, b) => a.at - b.at || a.k - b.k);
  const endOf = ({ at, k }: { at: number; k: number }) => (at + model.length[k]!) * step;
  const finish = finishOf(model, start);
  return {
    schedule: placed.map((row) => ({ job: row.job.id, start: row.at * step, end: endOf(row) })),
    finish,
    lowerBound: bound,
    late: placed.flatMap((row) => {
      const { dueBy, id } = row.job;
      return dueBy === undefined || endOf(row) <= dueBy
        ? []
        : [{ job: id, dueBy, minutes: endOf(row) - dueBy }];
    }),
    unplaced: rows
      .filter(({ at }) => at < 0)
      .map(({ job, k }) => ({ job: job.id, why: whyUnplaced(model, k, start) })),
    weightedLateness: latenessOf(model, start),
    overtimeUnitMinutes: overtimeOf(model, start),
  };
}

function whyUnplaced(model: YardModel, job: number, start: Int32Array): UnplacedWhy {
  if (model.before[job]!.some((before) => start[before]! < 0)) return "waitsForUnplaced";
  const alone = earliestFit(makeTimeline(model), job, model.notBefore[job]!, false);
  return alone < 0 ? "noShiftLongEnough" : "shiftsFull";
}

function findingsOf({ late, unplaced }: Schedule) {
  return [
    ...unplaced.map(({ job, why }) =>
      makeFinding("diary", "yard.unplaced", "refuse", "policy", {
        about: job,
        facts: { job, why },
        mends: ["yard.moreHands"],
      }),
    ),
    ...late.map(({ job, dueBy, minutes }) =>
      makeFinding("diary", "yard.late", "note", "policy", {
        about: job,
        facts: { job, minutes: figure(minutes, "min", "-", { dueBy }, "computed") },
        mends: ["yard.moreHands"],
      }),
    ),
  ];
}
