import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boundSchedule } from "./bound-schedule.ts";
import { checkSchedule } from "./check-schedule.ts";
import { compareJudgements, judgeSchedule } from "./judge-schedule.ts";
import { parseSchedule } from "./parse-schedule.ts";
import { proposeSchedule } from "./propose-schedule.ts";
import type { ScheduleInput } from "./types.ts";
import { modelYard } from "./yard-model.ts";

/** Two resources, the second with overtime early and late; up to three jobs. */
const smallDay = fc
  .array(
    fc.record({
      minutes: fc.integer({ min: 1, max: 3 }),
      hands: fc.integer({ min: 0, max: 2 }),
      bay: fc.integer({ min: 0, max: 1 }),
      waits: fc.boolean(),
      dueBy: fc.integer({ min: 2, max: 10 }),
      weight: fc.integer({ min: 1, max: 3 }),
    }),
    { minLength: 1, maxLength: 3 },
  )
  .map((jobs) =>
    parseSchedule({
      objective: "day",
      resources: [
        { id: "hands", capacity: 2 },
        {
          id: "bay",
          capacity: [
            { from: 0, to: 2, units: 1, overtime: true },
            { from: 2, to: 8, units: 1 },
            { from: 8, to: 12, units: 1, overtime: true },
          ],
        },
      ],
      jobs: jobs.map(({ hands, bay, waits, ...job }, k) => ({
        id: `j${k}`,
        ...job,
        needs: { ...(hands > 0 ? { hands } : {}), ...(bay > 0 ? { bay } : {}) },
        after: waits && k > 0 ? [`j${k - 1}`] : [],
      })),
    }),
  );
type Starts = readonly number[];

/** Minutes of work in the bay outside its regular hours, minute by minute. */
const overtimeBy = ({ jobs }: ScheduleInput, starts: Starts) =>
  jobs.reduce((sum, { minutes, needs }, k) => {
    const ran = Array.from({ length: minutes as number }, (_, m) => starts[k]! + m);
    return sum + (needs.bay ?? 0) * ran.filter((at) => at < 2 || at >= 8).length;
  }, 0);
const latenessBy = ({ jobs }: ScheduleInput, starts: Starts) =>
  jobs.reduce((sum, job, k) => {
    const end = starts[k]! + (job.minutes as number);
    return sum + job.weight * Math.max(0, end - job.dueBy!);
  }, 0);

/** Least lateness, then least overtime, over every start of every job in whole minutes. */
function bruteForce(input: ScheduleInput): readonly [number, number] {
  let best: readonly [number, number] = [Number.POSITIVE_INFINITY, 0];
  const go = (starts: Starts) => {
    const job = input.jobs[starts.length];
    if (job !== undefined) {
      for (let start = 0; start + (job.minutes as number) <= 12; start++) go([...starts, start]);
      return;
    }
    const score = [latenessBy(input, starts), overtimeBy(input, starts)] as const;
    if (score[0] > best[0] || (score[0] === best[0] && score[1] >= best[1])) return;
    const schedule = input.jobs.map(({ id, minutes }, k) => ({
      job: id,
      start: starts[k]!,
      end: starts[k]! + (minutes as number),
    }));
    const sums = { unplaced: [], late: [], weightedLateness: 0, overtimeUnitMinutes: 0 };
    const faults = checkSchedule(input, { ...sums, schedule, finish: 0, lowerBound: 0 });
    if (!faults.some(({ code }) => ["tooManyUnits", "beforeItsTurn"].includes(code))) best = score;
  };
  go([]);
  return best;
}

describe("a day with overtime and more than one resource", () => {
  it("is as little late as any order of the jobs allows, and with that in as little overtime", () => {
    fc.assert(
      fc.property(smallDay, (input) => {
        const best = bruteForce(input);
        fc.pre(Number.isFinite(best[0]));
        const { weightedLateness, overtimeUnitMinutes, unplaced } = proposeSchedule(input).result;
        expect(unplaced).toEqual([]);
        expect([weightedLateness, overtimeUnitMinutes]).toEqual(best);
        const model = modelYard(input);
        const order = Int32Array.from(input.jobs, (_, k) => k);
        expect(boundSchedule(model, order).lateness).toBeLessThanOrEqual(best[0]);
      }),
      { numRuns: 60 },
    );
  });

  it("is judged by lateness, overtime and finish, counted minute by minute", () => {
    fc.assert(
      fc.property(
        smallDay,
        fc.array(fc.nat({ max: 9 }), { minLength: 3, maxLength: 3 }),
        (input, anyStarts) => {
          const starts = input.jobs.map((_, k) => anyStarts[k]!);
          const model = modelYard(input);
          const inSteps = Int32Array.from(starts, (start) => start * (1 / model.step));
          fc.pre(starts.every((start) => start % model.step === 0));
          const finish = Math.max(...input.jobs.map(({ minutes }, k) => starts[k]! + (minutes as number)));
          // what stands on a resource beyond its regular units is counted, though no plan would hold it
          const above = (resource: "hands" | "bay", regularAt: (at: number) => number) =>
            Array.from({ length: 12 + 9 }, (_, at) => {
              const used = input.jobs.reduce((sum, { minutes, needs }, k) => {
                const isOn = starts[k]! <= at && at < starts[k]! + (minutes as number);
                return sum + (isOn ? (needs[resource] ?? 0) : 0);
              }, 0);
              return Math.max(0, used - regularAt(at));
            }).reduce((sum, each) => sum + each, 0);
          const overtime = above("hands", () => 2) + above("bay", (at) => (at >= 2 && at < 8 ? 1 : 0));
          expect(judgeSchedule(model, inSteps)).toEqual([0, latenessBy(input, starts), overtime, finish]);
        },
      ),
      { numRuns: 200 },
    );
  });

  it("first wants every job placed, then the first figure, then the second, then the third", () => {
    const inOrder = [
      [0, 0, 0, 9],
      [0, 0, 1, 0],
      [0, 1, 0, 0],
      [0, 1, 0, 1],
      [1, 0, 0, 0],
    ] as const;
    inOrder.forEach((a, i) => {
      inOrder.forEach((b, k) => {
        expect(Math.sign(compareJudgements(a, b))).toBe(Math.sign(i - k));
      });
    });
  });
});
