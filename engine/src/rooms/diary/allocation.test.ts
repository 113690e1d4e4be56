import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Allocation, AllocationInput } from "./allocation-types.ts";
import { checkPlan } from "./check-plan.ts";
import { parseAllocation } from "./parse-allocation.ts";
import { proposeAllocation } from "./propose-allocation.ts";

const time = (hour: number) =>
  `2026-05-${String(1 + Math.floor(hour / 24)).padStart(2, "0")}T${String(hour % 24).padStart(2, "0")}:00Z`;
const hire = (id: string, from: number, to: number, vehicles: string[], more = {}) => ({
  id,
  from: time(from),
  to: time(to),
  vehicles,
  ...more,
});
const given = (objective: "plan" | "fewest-vehicles", vehicles: number, hires: unknown[], more = {}) =>
  parseAllocation({
    objective,
    vehicles: Array.from({ length: vehicles }, (_, k) => ({ id: `v${k}` })),
    hires,
    ...more,
  });
const solve = (input: AllocationInput) => proposeAllocation(input).result;

/** Every way there is, judged by the checker alone: value, then vehicles or moves, then gaps. */
function bruteForce(input: AllocationInput): { value: number; cost: number } {
  let best = { value: -1, cost: 0 };
  const on: (string | null)[] = [];
  const holds = () => {
    const seated = on.flatMap((vehicle, k) =>
      vehicle === null ? [] : [{ hire: input.hires[k]!.id, vehicle }],
    );
    const plan: Allocation = {
      seated,
      refused: [],
      moves: [],
      value: 0,
      vehiclesUsed: 0,
      lowerBound: 0,
      upperBound: 0,
      proven: false,
      sellableGaps: 0,
    };
    const faults = checkPlan(input, plan).map(({ code }) => code);
    return !faults.some((code) => ["mayNotServe", "notAsFixed", "offTheRoad", "meets"].includes(code));
  };
  const go = (k: number) => {
    if (k === input.hires.length) {
      const value = on.reduce((sum, v, i) => sum + (v === null ? 0 : input.hires[i]!.value), 0);
      const moves = on.filter(
        (v, i) => v !== null && input.hires[i]!.now !== undefined && input.hires[i]!.now !== v,
      );
      const cost = input.objective === "plan" ? moves.length : new Set(on.filter((v) => v !== null)).size;
      if (value > best.value || (value === best.value && cost < best.cost)) best = { value, cost };
      return;
    }
    for (const vehicle of [null, ...input.hires[k]!.vehicles]) {
      on.push(vehicle);
      if (vehicle === null || holds()) go(k + 1);
      on.pop();
    }
  };
  go(0);
  return best;
}

const period = fc
  .tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 1, max: 24 }))
  .map(([from, length]) => ({ from: time(from), to: time(from + length) }));
const smallInput = (objective: "plan" | "fewest-vehicles") =>
  fc.integer({ min: 1, max: 3 }).chain((count) => {
    const ids = Array.from({ length: count }, (_, k) => `v${k}`);
    const hireArb = fc.record({
      period,
      vehicles: fc.subarray(ids),
      value: fc.integer({ min: objective === "plan" ? 0 : 1, max: 4 }),
      now: fc.option(fc.constantFrom(...ids), { nil: undefined }),
      isFixed: fc.boolean(),
    });
    return fc
      .record({
        hires: fc.array(hireArb, { maxLength: 5 }),
        off: fc.array(fc.array(period, { maxLength: 1 }), { minLength: count, maxLength: count }),
        turnaroundMinutes: fc.constantFrom(0, 60, 240),
      })
      .map(({ hires, off, turnaroundMinutes }) =>
        parseAllocation({
          objective,
          turnaroundMinutes,
          sellableMinutes: 300,
          vehicles: ids.map((id, k) => ({ id, unavailable: off[k] })),
          hires: hires.map(({ period, vehicles, value, now, isFixed }, k) => ({
            id: `h${k}`,
            ...period,
            vehicles,
            value,
            ...(now === undefined ? {} : { now }),
            ...(isFixed && vehicles.length > 0 ? { fixed: vehicles[0] } : {}),
          })),
        }),
      );
  });

describe("seating hires on vehicles", () => {
  it("one may go out when another comes back, and not a minute before the turnaround is over", () => {
    const two = [hire("a", 0, 10, ["v0"]), hire("b", 10, 20, ["v0"])];
    expect(solve(given("plan", 1, two)).refused).toEqual([]);
    expect(solve(given("plan", 1, two, { turnaroundMinutes: 1 })).refused).toMatchObject([
      { why: "vehiclesTaken" },
    ]);
  });

  it("says for each refused hire why", () => {
    const off = { vehicles: [{ id: "v0", unavailable: [{ from: time(5), to: time(6) }] }] };
    const answer = proposeAllocation(given("plan", 1, [hire("a", 0, 6, ["v0"]), hire("b", 0, 5, [])], off));
    expect(answer.result.refused).toEqual([
      { hire: "a", why: "vehiclesUnavailable" },
      { hire: "b", why: "noVehicleAllowed" },
    ]);
    expect(answer.findings).toMatchObject([
      { code: "diary.notSeated", about: "a", severity: "refuse" },
      { code: "diary.notSeated", about: "b" },
    ]);
  });

  it("moves one hire to make room for another, and says so", () => {
    const hires = [hire("a", 0, 10, ["v0", "v1"], { now: "v0" }), hire("b", 0, 10, ["v0"])];
    expect(solve(given("plan", 2, hires))).toMatchObject({
      moves: [{ hire: "a", from: "v0", to: "v1" }],
      value: 2,
      proven: true,
    });
  });

  it("keeps the long gap whole where value and moves are alike", () => {
    const hires = [hire("a", 0, 10, ["v0"]), hire("b", 30, 40, ["v0"]), hire("c", 12, 28, ["v0", "v1"])];
    const { seated } = solve(given("plan", 2, hires, { sellableMinutes: 2400 }));
    expect(seated.find((each) => each.hire === "c")?.vehicle).toBe("v0");
  });

  it("counts no further hire into the turnaround of one that ends where the vehicle goes off the road", () => {
    const off = { vehicles: [{ id: "v0", unavailable: [{ from: time(14), to: time(15) }] }] };
    const hires = [hire("a", 11, 20, []), hire("b", 0, 1, [])];
    const few = given("plan", 1, hires, { ...off, turnaroundMinutes: 240, sellableMinutes: 300 });
    expect(solve(few).sellableGaps).toBe(2);
  });

  for (const objective of ["plan", "fewest-vehicles"] as const)
    it(`finds what trying every way finds (${objective})`, () => {
      fc.assert(
        fc.property(smallInput(objective), (input) => {
          const result = solve(input);
          const best = bruteForce(input);
          expect(result.value).toBe(best.value);
          expect(objective === "plan" ? result.moves.length : result.vehiclesUsed).toBe(best.cost);
          expect(result.upperBound).toBeGreaterThanOrEqual(best.value);
          if (objective === "fewest-vehicles") expect(result.lowerBound).toBeLessThanOrEqual(best.cost);
        }),
        { numRuns: 80 },
      );
    });

  it("seats a tightly packed season on as many vehicles as are out at once, the same each time", () => {
    // each vehicle's own hires lie end to end, and each hire may go on its own vehicle and some others
    const hires = Array.from({ length: 120 }, (_, k) => {
      const own = k % 12;
      const turn = Math.floor(k / 12);
      const start = turn * 30 + ((own * 7) % 30);
      const also = [(own + 1 + turn) % 15, (own * 5 + turn) % 15, (own + 7) % 15];
      return hire(
        `h${k}`,
        start,
        start + 30,
        [...new Set([own, ...also])].map((v) => `v${v}`),
      );
    });
    const input = given("fewest-vehicles", 15, hires);
    const first = solve(input);
    expect(first).toMatchObject({ vehiclesUsed: 12, lowerBound: 12, proven: true, refused: [] });
    expect(solve(input)).toEqual(first);
  });

  it("bounds the value that no plan passes where not all find a seat", () => {
    const hires = Array.from({ length: 60 }, (_, k) =>
      hire(`h${k}`, (k * 5) % 100, ((k * 5) % 100) + 12 + (k % 9), [`v${k % 4}`, `v${(k + 1) % 4}`], {
        value: 1 + (k % 7),
      }),
    );
    const { value, upperBound, refused } = solve(given("plan", 4, hires));
    expect(refused.length).toBeGreaterThan(0);
    expect(upperBound).toBeGreaterThanOrEqual(value);
    expect(upperBound).toBeLessThanOrEqual(value * 1.05);
  });

  it("names each field of an input that contradicts itself", () => {
    const bad = [hire("a", 0, 10, ["v0"], { fixed: "v1" }), hire("a", 9, 9, ["v9"], { now: "v8" })];
    expect(() => given("plan", 2, bad)).toThrow(
      /hires\.1\.id: .*hires\.0\.fixed: .*hires\.1\.to: .*hires\.1\.vehicles\.0: .*hires\.1\.now: /,
    );
    expect(() => given("plan", 1, [{ ...hire("a", 0, 1, []), from: "2026-02-30T10:00Z" }])).toThrow(
      /hires\.0\.from/,
    );
  });
});

describe("the checker of plans", () => {
  const input = given("plan", 2, [
    hire("a", 0, 10, ["v0", "v1"], { now: "v0" }),
    hire("b", 5, 15, ["v0", "v1"]),
  ]);
  const good = solve(input);
  const spoiled: Readonly<Record<string, Partial<Allocation>>> = {
    hireMissing: { seated: good.seated.slice(1) },
    hireTwice: { refused: [{ hire: "a", why: "vehiclesTaken" }] },
    meets: { seated: good.seated.map((each) => ({ ...each, vehicle: "v0" })) },
    unknownVehicle: { seated: [good.seated[0]!, { hire: "b", vehicle: "v7" }] },
    value: { value: 3 },
    moves: { moves: [{ hire: "a", from: "v0", to: "v1" }] },
    vehiclesUsed: { vehiclesUsed: 1 },
    upperBound: { upperBound: 1 },
    sellableGaps: { sellableGaps: good.sellableGaps + 1 },
  };
  for (const [code, change] of Object.entries(spoiled))
    it(`finds ${code}`, () => {
      expect(checkPlan(input, good)).toEqual([]);
      expect(checkPlan(input, { ...good, ...change }).map((fault) => fault.code)).toContain(code);
    });
});
