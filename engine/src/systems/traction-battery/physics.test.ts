import { describe, expect, it } from "vitest";
import type { Setting, StepView } from "../contract.ts";
import { parseSpec } from "../registry.ts";
import { physics } from "./physics.ts";

const USABLE_WH = 50_000;
const context = { n: 1, dtH: 0.25, people: 2, vehicle: { floorAreaM2: 7, consumptionLPer100Km: 10 } };

/** Share of its power at which the converter to 12 V works in a quarter of an hour on the road. */
function converterShare(levelWh: number, distanceKm: number, setting: Setting = {}, fastChargeKw = 50) {
  const spec = parseSpec("tractionBattery", {
    usableKwh: USABLE_WH / 1000,
    kwhPer100Km: 25,
    dcdcW: 500,
    fastChargeKw,
  });
  const converter = physics.start!(spec, { ...context, setting }).find(
    ({ modes }) => modes[0]!.id === "converter",
  )!;
  const view = { driving: true, distanceKm, level: () => new Float64Array(1).fill(levelWh) };
  converter.prepare(view as unknown as StepView, converter.demand);
  return converter.demand[0]!;
}

describe("the converter of a drive battery to 12 V", () => {
  it("is shed as the battery goes from a fifth to a twentieth, by what is there in the middle of the step", () => {
    const off = { chargeOnTheWay: false };
    expect(converterShare(0.5 * USABLE_WH, 0, off)).toBe(1);
    expect(converterShare(0.125 * USABLE_WH, 0, off)).toBeCloseTo(0.5, 9);
    // 20 km take a tenth of the battery, half of it until the middle
    expect(converterShare(0.175 * USABLE_WH, 20, off)).toBeCloseTo(0.5, 9);
    expect(converterShare(0.04 * USABLE_WH, 0, off)).toBe(0);
  });

  it("works where the hirer charges on the way, since the battery fills meanwhile", () => {
    // 12.5 kWh in the quarter of an hour: a quarter of the battery
    expect(converterShare(0.125 * USABLE_WH, 0)).toBe(1);
    // as much charged as driven
    expect(converterShare(0.3 * USABLE_WH, 20)).toBe(1);
    expect(converterShare(0.125 * USABLE_WH, 0, {}, 0)).toBeCloseTo(0.5, 9);
  });
});
