import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Mode, Running } from "../systems/contract.ts";
import { beginStep, createEnsemble, indexOf, residual, setLevel } from "./ensemble.ts";
import { compileRunning, returnUnused, settleRunning } from "./settle.ts";

function mode(
  n: number,
  needs: readonly [Mode["needStores"][number], number][],
  gives: readonly [Mode["giveStores"][number], number][],
  limit = 1,
): Mode {
  return {
    id: "test",
    needStores: needs.map(([store]) => store),
    needs: needs.map(([, amount]) => new Float64Array(n).fill(amount)),
    giveStores: gives.map(([store]) => store),
    gives: gives.map(([, amount]) => new Float64Array(n).fill(amount)),
    limit: new Float64Array(n).fill(limit),
  };
}

function running(modes: readonly Mode[], demand: number, n: number): Running {
  return { modes, demand: new Float64Array(n).fill(demand), prepare: () => true };
}

describe("the settlement of a step", () => {
  it("takes the second mode for what the first cannot do", () => {
    const e = createEnsemble(
      1,
      new Map([
        ["lpg", { capacity: 10, level: 10 }],
        ["cabinHeat", { capacity: 1e6, level: 0 }],
      ]),
    );
    beginStep(e);
    // the post has 300 of the 1000 that full heat would take
    setLevel(e, indexOf("mains230"), 0, 300);
    const heater = running(
      [mode(1, [["mains230", 1000]], [["cabinHeat", 1000]]), mode(1, [["lpg", 0.1]], [["cabinHeat", 1000]])],
      0.8,
      1,
    );
    settleRunning(compileRunning(heater, e), e);
    expect(e.level[indexOf("mains230")]![0]).toBeCloseTo(0, 9);
    expect(e.level[indexOf("lpg")]![0]).toBeCloseTo(10 - 0.05, 9);
    expect(e.level[indexOf("cabinHeat")]![0]).toBeCloseTo(800, 9);
  });

  it("keeps a conversion balanced where one side runs short", () => {
    const e = createEnsemble(
      1,
      new Map([
        ["lpg", { capacity: 10, level: 10 }],
        ["battery12", { capacity: 500, level: 1 }],
        ["cabinHeat", { capacity: 1e6, level: 0 }],
      ]),
    );
    const heater = running(
      [
        mode(
          1,
          [
            ["lpg", 0.1],
            ["battery12", 4],
          ],
          [["cabinHeat", 1000]],
        ),
      ],
      1,
      1,
    );
    beginStep(e);
    settleRunning(compileRunning(heater, e), e);
    expect(e.level[indexOf("battery12")]![0]).toBe(0);
    expect(e.level[indexOf("lpg")]![0]).toBeCloseTo(10 - 0.025, 12);
    expect(e.level[indexOf("cabinHeat")]![0]).toBeCloseTo(250, 9);
  });

  it("never runs a mode that needs a store which the vehicle does not have", () => {
    const e = createEnsemble(1, new Map([["battery12", { capacity: 500, level: 400 }]]));
    const compiled = compileRunning(running([mode(1, [["lpg", 0.1]], [["battery12", 10]])], 1, 1), e);
    beginStep(e);
    settleRunning(compiled, e);
    expect(e.level[indexOf("battery12")]![0]).toBe(400);
  });

  it("keeps every level between empty and full and what went in less what came out equal to the change", () => {
    const amount = fc.double({ min: 0, max: 300, noNaN: true });
    const step = fc.record({
      draw: amount,
      fill: amount,
      both: amount,
      limit: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.array(step, { minLength: 1, maxLength: 60 }),
        (level, steps) => {
          const e = createEnsemble(
            1,
            new Map([
              ["battery12", { capacity: 500, level }],
              ["freshWater", { capacity: 90, level: 40 }],
              ["wasteWater", { capacity: 50, level: 0 }],
            ]),
          );
          for (const { draw, fill, both, limit } of steps) {
            beginStep(e);
            settleRunning(compileRunning(running([mode(1, [], [["battery12", fill]])], 1, 1), e), e);
            settleRunning(compileRunning(running([mode(1, [["battery12", draw]], [], limit)], 1, 1), e), e);
            settleRunning(
              compileRunning(
                running(
                  [
                    mode(
                      1,
                      [
                        ["freshWater", both / 20],
                        ["battery12", 1],
                      ],
                      [["wasteWater", both / 22]],
                    ),
                  ],
                  1,
                  1,
                ),
                e,
              ),
              e,
            );
            for (const [store, capacity] of [
              ["battery12", 500],
              ["freshWater", 90],
              ["wasteWater", 50],
            ] as const) {
              const now = e.level[indexOf(store)]![0]!;
              expect(now).toBeGreaterThanOrEqual(0);
              expect(now).toBeLessThanOrEqual(capacity);
              expect(residual(e, indexOf(store))).toBeLessThan(1e-9);
            }
          }
        },
      ),
    );
  });

  it("takes of every shape of mode just what wants, limit and stores allow", () => {
    // whole numbers: doubles drawn by their bits are nearly all next to nought
    const amount = fc.integer({ min: 0, max: 300 });
    const share = fc.integer({ min: 0, max: 100 }).map((pct) => pct / 100);
    const shares = fc.record({ wanted: share, limit: share });
    const needs = fc.uniqueArray(fc.constantFrom("lpg", "battery12"), { maxLength: 2 });
    fc.assert(
      fc.property(
        needs,
        fc.boolean(),
        amount,
        amount,
        shares,
        (needStores, gives, need, give, { wanted, limit }) => {
          const held = { lpg: 40, battery12: 130 } as const;
          const e = createEnsemble(
            2,
            new Map([
              ["lpg", { capacity: 100, level: held.lpg }],
              ["battery12", { capacity: 200, level: held.battery12 }],
              ["freshWater", { capacity: 90, level: 20 }],
            ]),
          );
          const one = running(
            [
              mode(
                2,
                needStores.map((store) => [store, need]),
                gives ? [["freshWater", give]] : [],
                limit,
              ),
            ],
            wanted,
            2,
          );
          beginStep(e);
          settleRunning(compileRunning(one, e), e);
          const activity = Math.min(
            wanted,
            limit,
            ...needStores.map((store) => (need > 0 ? held[store as keyof typeof held] / need : 1)),
            gives && give > 0 ? 70 / give : 1,
          );
          for (const life of [0, 1]) {
            expect(one.demand[life]).toBeCloseTo(wanted - activity, 9);
            for (const store of ["lpg", "battery12"] as const) {
              const drawn = needStores.includes(store) ? activity * need : 0;
              expect(e.level[indexOf(store)]![life]).toBeCloseTo(held[store] - drawn, 6);
            }
            expect(e.level[indexOf("freshWater")]![life]).toBeCloseTo(20 + (gives ? activity * give : 0), 6);
          }
        },
      ),
    );
  });

  it("gives back what an inverter made and nobody took", () => {
    const e = createEnsemble(1, new Map([["battery12", { capacity: 1000, level: 900 }]]));
    beginStep(e);
    const battery = indexOf("battery12");
    const inverter: Running = {
      ...running([mode(1, [["battery12", 500]], [["inverter230", 450]])], 1, 1),
      onDemand: true,
    };
    const hob = running([mode(1, [["inverter230", 90]], [])], 1, 1);
    const [made, taken] = [compileRunning(inverter, e), compileRunning(hob, e)];
    settleRunning(made, e);
    settleRunning(taken, e);
    returnUnused(made, e);
    // 90 of 450 were taken, so a fifth of 500 was drawn
    expect(e.level[battery]![0]).toBeCloseTo(800, 9);
    expect(e.outOf[battery]![0]).toBeCloseTo(100, 9);
    expect(made.drawSum[battery]).toBeCloseTo(100, 9);
    expect(e.level[indexOf("inverter230")]![0]).toBeCloseTo(0, 9);
    expect(residual(e, battery)).toBeLessThan(1e-12);
  });

  it("refuses to take back what was not made from one store for one supply", () => {
    const e = createEnsemble(1, new Map([["battery12", { capacity: 1000, level: 900 }]]));
    const odd: Running = { ...running([mode(1, [], [["battery12", 1]])], 1, 1), onDemand: true };
    expect(() => returnUnused(compileRunning(odd, e), e)).toThrow("one need and one supply");
  });
});
