import { describe, expect, it } from "vitest";
import { BadInput } from "../../base/bad-input.ts";
import { shownChancePct } from "../../formulas/trip.ts";
import { forecastTrip } from "./forecast-trip.ts";
import { reforecastTrip } from "./reforecast-trip.ts";
import { SpreadOf } from "./spread-of.ts";
import { newYearMountains } from "./try-trips.ts";
import type { Reading } from "./types.ts";

const at = "2026-12-30T08:00";
const battery = (readings: readonly Reading[]) => {
  const { result } = reforecastTrip(newYearMountains(), readings);
  return { store: result.stores.find(({ store }) => store === "battery12")!, result };
};
const first = forecastTrip(newYearMountains()).result.stores.find(({ store }) => store === "battery12")!;

describe("the forecast after a reading on the panel", () => {
  it("without a reading is the forecast as it was", () => {
    expect(reforecastTrip(newYearMountains(), [])).toEqual(forecastTrip(newYearMountains()));
  });

  it("moves trouble back after a better reading than expected, and forward after a worse one", () => {
    const better = battery([{ store: "battery12", value: 12.45, unit: "V", at }]).store;
    const worse = battery([{ store: "battery12", value: 53, unit: "%", at, sd: 5 }]).store;
    expect(better.trouble.p50At! > first.trouble.p50At!).toBe(true);
    expect(worse.trouble.p50At! < first.trouble.p50At!).toBe(true);
  });

  it("weighs the lives where enough of them agree", () => {
    const [use] = battery([{ store: "battery12", value: 12.35, unit: "V", at }]).result.readings;
    expect(use).toMatchObject({ store: "battery12", how: "weighted" });
    expect(use!.effective).toBeGreaterThan(100);
    expect(use!.effective).toBeLessThanOrEqual(500);
  });

  it("starts the store again from a reading that hardly any life expected", () => {
    const reading: Reading = { store: "battery12", value: 97, unit: "%", at: "2026-12-30T18:00", sd: 2 };
    const { store, result } = battery([reading]);
    expect(result.readings[0]!.how).toBe("restarted");
    const hour = result.axis.at.indexOf("2026-12-30T19:00");
    expect(store.band.p50[hour]!).toBeGreaterThan(450);
    expect(store.trouble.p10At! > "2026-12-30T18:00").toBe(true);
  });

  it("does not take lives that all left full for agreeing with a battery at its cut-off", () => {
    // a moment after departure every life holds the same, so every life weighs the same
    const depart = newYearMountains().trip.depart;
    const { store, result } = battery([{ store: "battery12", value: 12.1, unit: "V", at: depart }]);
    expect(result.readings[0]!.how).toBe("restarted");
    expect(store.trouble.chance).toBeGreaterThan(0.5);
  });

  it("counts trouble from the latest reading on, in every store and on the way to every stop", () => {
    const read = "2027-01-01T12:00";
    const before = forecastTrip(newYearMountains()).result;
    expect(before.stores.some(({ trouble }) => trouble.p10At !== null && trouble.p10At < read)).toBe(true);
    for (const value of [40, 95]) {
      const { result } = battery([{ store: "battery12", value, unit: "%", at: read, sd: 5 }]);
      for (const { trouble } of result.stores)
        for (const when of [trouble.p10At, trouble.p50At, trouble.p90At, trouble.middleAt])
          if (when != null) expect(when > read).toBe(true);
      const reached = result.stops.filter(({ arrive }) => arrive <= read);
      expect(reached.length).toBeGreaterThan(0);
      for (const { reachChance } of reached) expect(reachChance).toBe(1);
    }
  });

  it("takes several readings of several stores, in any order", () => {
    const readings: Reading[] = [
      { store: "lpg", value: 10.5, unit: "kg", at: "2026-12-30T18:00" },
      { store: "battery12", value: 12.35, unit: "V", at },
      { store: "freshWater", value: 75, unit: "%", at: "2026-12-30T18:00" },
    ];
    const { result } = battery(readings);
    expect(result.readings).toHaveLength(3);
    expect(result).toEqual(battery(readings.toReversed()).result);
  });

  it("names the field of a reading that means nothing", () => {
    const fail = (reading: Reading) => () => reforecastTrip(newYearMountains(), [reading]);
    expect(fail({ store: "lpg", value: 12, unit: "V", at })).toThrow(
      /readings\.0\.unit: expected one of %, kg/,
    );
    expect(fail({ store: "lpg", value: 5, unit: "kg", at: "2027-02-01T08:00" })).toThrow(/readings\.0\.at/);
    expect(fail({ store: "lpg", value: -5, unit: "kg", at })).toThrow(BadInput);
  });
});

describe("quantiles over weighted lives", () => {
  it("give the equal-weight median for equal weights, to the nearest life", () => {
    const values = Float64Array.from([5, 1, 4, 2, 3]);
    expect(new SpreadOf(5, null).quantiles(values, [0, 0.5, 1])).toEqual([1, 3, 5]);
    expect(new SpreadOf(5, new Float64Array(5).fill(0.2)).quantiles(values, [0.2, 0.5, 1])).toEqual([
      1, 3, 5,
    ]);
  });

  it("follow the weight", () => {
    const heavy = new SpreadOf(3, Float64Array.from([0.05, 0.05, 0.9]));
    expect(heavy.quantiles(Float64Array.from([1, 2, 3]), [0.5])).toEqual([3]);
    expect(heavy.chance((i) => i === 2)).toBeCloseTo(0.9, 12);
  });

  it("are shown in steps of 5 %, never rounded to certainty", () => {
    expect([0, 0.001, 0.12, 0.5, 0.999, 1].map(shownChancePct)).toEqual([0, 5, 10, 50, 95, 100]);
  });
});
