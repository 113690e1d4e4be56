import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkSchedule } from "./check-schedule.ts";
import { parseSchedule } from "./parse-schedule.ts";
import { proposeSchedule } from "./propose-schedule.ts";
import type { Schedule, ScheduleInput } from "./types.ts";

const given = (objective: "day" | "earliest-finish", resources: unknown[], jobs: unknown[]) =>
  parseSchedule({ objective, resources, jobs });
const solve = (input: ScheduleInput) => proposeSchedule(input).result;
const one = [{ id: "bay", capacity: 1 }];

/** Every start of every job in whole minutes, judged by the checker alone. */
function bruteForce(input: ScheduleInput, horizon: number): number {
  let best = Number.POSITIVE_INFINITY;
  const schedule: { job: string; start: number; end: number }[] = [];
  const empty = {
    unplaced: [],
    weightedLateness: 0,
    overtimeUnitMinutes: 0,
    late: [],
    finish: 0,
    lowerBound: 0,
  };
  const holds = () =>
    checkSchedule(input, { ...empty, schedule }).every(
      ({ code }) => !["tooManyUnits", "tooEarly", "beforeItsTurn"].includes(code),
    );
  const go = (k: number) => {
    const job = input.jobs[k];
    if (job === undefined) {
      const finish = schedule.reduce((most, { end }) => Math.max(most, end), 0);
      const late = schedule.reduce((sum, { end }, at) => {
        const { dueBy, weight } = input.jobs[at]!;
        return sum + weight * Math.max(0, end - (dueBy ?? end));
      }, 0);
      best = Math.min(best, input.objective === "day" ? late : finish);
      return;
    }
    for (let start = 0; start + (job.minutes as number) <= horizon; start++) {
      schedule.push({ job: job.id, start, end: start + (job.minutes as number) });
      if (holds()) go(k + 1);
      schedule.pop();
    }
  };
  go(0);
  return best;
}

const smallInput = (objective: "day" | "earliest-finish") =>
  fc
    .record({
      capacity: fc.constantFrom<unknown>(2, [
        { from: 1, to: 9, units: 2 },
        { from: 4, to: 30, units: 1 },
      ]),
      jobs: fc.array(
        fc.record({
          minutes: fc.integer({ min: 0, max: 3 }),
          units: fc.integer({ min: 0, max: 2 }),
          waits: fc.boolean(),
          notBefore: fc.integer({ min: 0, max: 3 }),
          dueBy: fc.integer({ min: 0, max: 6 }),
          weight: fc.integer({ min: 0, max: 3 }),
        }),
        { maxLength: 3 },
      ),
    })
    .map(({ capacity, jobs }) =>
      given(
        objective,
        [{ id: "hands", capacity }],
        jobs.map(({ units, waits, ...job }, k) => ({
          id: `j${k}`,
          ...job,
          needs: units > 0 ? { hands: units } : {},
          after: waits && k > 0 ? [`j${k - 1}`] : [],
        })),
      ),
    );

describe("putting the yard's jobs in time", () => {
  it("runs side by side what the hands allow, and the rest after", () => {
    const jobs = ["a", "b", "c"].map((id) => ({ id, minutes: 30, needs: { hands: 1 } }));
    expect(solve(given("earliest-finish", [{ id: "hands", capacity: 2 }], jobs))).toMatchObject({
      finish: 60,
      lowerBound: 60,
      proven: true,
    });
  });

  for (const objective of ["day", "earliest-finish"] as const)
    it(`finds what trying every minute finds (${objective})`, () => {
      fc.assert(
        fc.property(smallInput(objective), (input) => {
          const result = solve(input);
          const best = bruteForce(input, 14);
          fc.pre(Number.isFinite(best));
          expect(result.unplaced).toEqual([]);
          expect(objective === "day" ? result.weightedLateness : result.finish).toBe(best);
          if (objective === "earliest-finish") expect(result.lowerBound).toBeLessThanOrEqual(best);
        }),
        { numRuns: 25 },
      );
    });

  it("does the job of the hire that leaves first, and tells what is late", () => {
    const jobs = [
      { id: "later", minutes: 60, needs: { bay: 1 }, dueBy: 150 },
      { id: "sooner", minutes: 60, needs: { bay: 1 }, dueBy: 60 },
      { id: "third", minutes: 60, needs: { bay: 1 }, dueBy: 160, weight: 2 },
    ];
    const answer = proposeSchedule(given("day", one, jobs));
    expect(answer.result.schedule.map(({ job }) => job)).toEqual(["sooner", "third", "later"]);
    expect(answer.result.late).toEqual([{ job: "later", dueBy: 150, minutes: 30 }]);
    expect(answer.findings).toMatchObject([{ code: "yard.late", about: "later" }]);
  });

  it("waits for the regular shift where nothing is late for it, and works overtime where something would be", () => {
    const capacity = [
      { from: 0, to: 60, units: 1, overtime: true },
      { from: 60, to: 240, units: 1 },
    ];
    const job = { id: "a", minutes: 60, needs: { bay: 1 } };
    const resources = [{ id: "bay", capacity }];
    expect(solve(given("day", resources, [{ ...job, dueBy: 120 }])).overtimeUnitMinutes).toBe(0);
    expect(solve(given("day", resources, [{ ...job, dueBy: 90 }])).overtimeUnitMinutes).toBe(30);
    expect(solve(given("day", resources, [{ ...job, dueBy: 90 }])).schedule).toMatchObject([{ start: 30 }]);
  });

  it("says which jobs the shifts hold no room for, and why", () => {
    const resources = [{ id: "bay", capacity: [{ from: 0, to: 50, units: 1 }] }];
    const jobs = [
      { id: "long", minutes: 60, needs: { bay: 1 } },
      { id: "next", minutes: 5, after: ["long"] },
      { id: "a", minutes: 30, needs: { bay: 1 } },
      { id: "b", minutes: 30, needs: { bay: 1 } },
    ];
    expect(solve(given("day", resources, jobs)).unplaced).toEqual([
      { job: "long", why: "noShiftLongEnough" },
      { job: "next", why: "waitsForUnplaced" },
      { job: "b", why: "shiftsFull" },
    ]);
  });

  it("gives the chance of each due time: a half where p50 just fits, the same each time", () => {
    const minutes = { p10: 40, p50: 60, p90: 80 };
    const jobs = ["a", "b"].map((id, k) => ({ id, minutes, needs: { bay: 1 }, dueBy: 60 * (k + 1) }));
    const first = solve(given("day", one, jobs)).chances;
    for (const { chance } of first ?? []) expect(Math.abs(chance - 0.5)).toBeLessThan(0.08);
    expect(first).toHaveLength(2);
    expect(solve(given("day", one, jobs)).chances).toEqual(first);
  });

  it("names each field of an input that no schedule can serve", () => {
    const job = { minutes: 5, needs: { bay: 2, pit: 1 }, after: ["x"] };
    expect(() => given("day", one, [{ id: "a", ...job }])).toThrow(
      /jobs\.0\.needs\.bay: expected at most 1.*jobs\.0\.needs\.pit: .*jobs\.0\.after\.0: /,
    );
    expect(() =>
      given("day", one, [
        { id: "a", minutes: 5, after: ["b"] },
        { id: "b", minutes: 5, after: ["a"] },
      ]),
    ).toThrow(/jobs\.0\.after: expected no ring/);
    expect(() => given("day", one, [{ id: "a", minutes: { p10: 5, p50: 4, p90: 9 } }])).toThrow(/p10 ≤ p50/);
  });
});

describe("the checker of schedules", () => {
  const input = given("day", one, [
    { id: "a", minutes: 10, needs: { bay: 1 }, notBefore: 5, dueBy: 10 },
    { id: "b", minutes: 10, needs: { bay: 1 }, after: ["a"] },
  ]);
  const good = solve(input);
  const [a, b] = [good.schedule[0]!, good.schedule[1]!];
  const spoiled: Readonly<Record<string, Partial<Schedule>>> = {
    tooManyUnits: { schedule: [a, { job: "b", start: 14, end: 24 }] },
    tooEarly: { schedule: [{ job: "a", start: 4, end: 14 }, b] },
    beforeItsTurn: { schedule: [{ job: "a", start: 30, end: 40 }, b] },
    length: { schedule: [a, { ...b, end: b.end - 1 }] },
    notOnce: { schedule: [a] },
    unknownJob: { schedule: [a, { ...b, job: "c" }] },
    finish: { finish: 24 },
    lowerBound: { lowerBound: 26 },
    late: { late: [] },
    weightedLateness: { weightedLateness: 0 },
    overtimeUnitMinutes: { overtimeUnitMinutes: 1 },
  };
  for (const [code, change] of Object.entries(spoiled))
    it(`finds ${code}`, () => {
      expect(checkSchedule(input, good)).toEqual([]);
      expect(checkSchedule(input, { ...good, ...change }).map((fault) => fault.code)).toContain(code);
    });
});
