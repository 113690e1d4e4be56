import { describe, expect, it } from "vitest";
import { createEnsemble, indexOf } from "../../stores/ensemble.ts";
import { compileRunning } from "../../stores/settle.ts";
import type { StoreId } from "../../stores/stores.ts";
import type { Keeping, Running } from "../../systems/contract.ts";
import { createMode, createRunning } from "../../systems/running.ts";
import { type AtWork, layOuts, runStep } from "./run-step.ts";
import type { SystemView } from "./step-view.ts";
import { TimesOfDay } from "./times-of-day.ts";

/** bits of every time of the day */
const ANY_TIME = -1;
const BATTERY_WH = 100;
const LOW_WH = 25;

/** Wants so much of the battery in the step, and of other stores for it; gives as much warmth to the cabin. */
function wants(wh: number, others: Partial<Record<StoreId, number>> = {}): Running {
  const stores = Object.keys(others) as StoreId[];
  const mode = createMode("on", 1, [...stores, "battery12"], ["cabinHeat"]);
  stores.forEach((store, k) => {
    mode.needs[k]!.fill(others[store]!);
  });
  mode.needs[stores.length]!.fill(wh);
  mode.gives[0]!.fill(wh);
  return createRunning(1, [mode], (_view, demand) => {
    demand.fill(1);
    return true;
  });
}

/** What each of them has drawn of the battery after one step. */
function drawnOf(levelWh: number, runnings: readonly Running[], lpgKg = 0): number[] {
  const ensemble = createEnsemble(
    1,
    new Map<StoreId, { capacity: number; level: number }>([
      ["battery12", { capacity: BATTERY_WH, level: levelWh }],
      ["lpg", { capacity: 10, level: lpgKg }],
      ["cabinHeat", { capacity: 1e6, level: 0 }],
    ]),
  );
  const level = ensemble.level[indexOf("battery12")]!;
  const holds: Keeping = {
    store: "battery12",
    limitOut: (_view, mostOut) => {
      mostOut.set(level);
      return level[0]! < LOW_WH;
    },
  };
  const all = runnings.map(
    (running, k): AtWork => ({
      fitted: null,
      view: {} as SystemView,
      running: [compileRunning(running, ensemble)],
      keeping: k === 0 ? holds : null,
      byStop: new Map(),
      again: false,
      lost: new Float64Array(ensemble.level.length),
    }),
  );
  const times = new TimesOfDay(all.flatMap(({ running }) => running));
  runStep(layOuts(all, 0, [], times)(-1, false, false), ensemble, 0, ANY_TIME);
  return all.map(({ running }) => running[0]!.drawSum[indexOf("battery12")]!);
}

describe("a step in which the battery runs out", () => {
  it("serves all that runs on it for the same time, whatever the order", () => {
    expect(drawnOf(6, [wants(9), wants(3)])).toEqual([4.5, 1.5]);
    expect(drawnOf(6, [wants(3), wants(9)])).toEqual([1.5, 4.5]);
  });

  it("serves everybody where it lasts", () => {
    expect(drawnOf(12, [wants(9), wants(3)])).toEqual([9, 3]);
    expect(drawnOf(90, [wants(9), wants(3)])).toEqual([9, 3]);
  });

  it("counts nobody who cannot run for want of something else", () => {
    expect(drawnOf(6, [wants(9), wants(3, { lpg: 1 })])[0]).toBe(6);
    // gas for half of it: 1.5 Wh, and four fifths of the step
    expect(drawnOf(6, [wants(6), wants(3, { lpg: 1 })], 0.5)).toEqual([
      expect.closeTo(4.8, 9),
      expect.closeTo(1.2, 9),
    ]);
  });
});
