import { describe, expect, it } from "vitest";
import { daysFromSeries, type SeriesPoint } from "./days-from-series.ts";

const place = { latitudeDeg: 57.2, longitudeDeg: -3.83 };
const start = Date.parse("2026-06-20T00:00Z");

/** Hourly or sparser points of a day that is coldest at 03:00 and warmest at 15:00 UTC. */
function series(hours: number, everyH: number, cloudShare: number | null): SeriesPoint[] {
  return Array.from({ length: hours / everyH + 1 }, (_, k) => {
    const h = k * everyH;
    return {
      epochMs: start + h * 3_600_000,
      airC: 12 - 5 * Math.cos(((h - 3) / 12) * Math.PI),
      cloudShare,
    };
  });
}

describe("days from a forecast by instants", () => {
  it("have the lowest and the highest of their points, and only whole days count", () => {
    const days = daysFromSeries(series(60, 1, 0), place, "Europe/London");
    // British Summer Time: the first civil day began an hour before the series
    expect(days.map(({ date }) => date)).toEqual(["2026-06-21"]);
    expect(days[0]!.minC).toBeCloseTo(7, 9);
    expect(days[0]!.maxC).toBeCloseTo(17, 9);
  });

  it("a day with a gap of more than six hours is left out", () => {
    const hourly = series(72, 1, 0);
    const gap = hourly.filter((_, k) => k < 30 || k > 37);
    expect(daysFromSeries(hourly, place, "UTC").map(({ date }) => date)).toEqual([
      "2026-06-20",
      "2026-06-21",
      "2026-06-22",
    ]);
    expect(daysFromSeries(gap, place, "UTC").map(({ date }) => date)).toEqual(["2026-06-20", "2026-06-22"]);
    expect(daysFromSeries(series(72, 6, 0), place, "UTC")).toHaveLength(3);
    expect(daysFromSeries([], place, "UTC")).toEqual([]);
  });

  it("a clear midsummer day in the Highlands has 7 to 9 kWh/m², an overcast one a quarter of it", () => {
    const sun = (cloud: number | null) => daysFromSeries(series(24, 1, cloud), place, "UTC")[0]!.sunKwhM2;
    expect(sun(0)!).toBeGreaterThan(7);
    expect(sun(0)!).toBeLessThan(9);
    expect(sun(1)! / sun(0)!).toBeCloseTo(0.25, 9);
    expect(sun(null)).toBeNull();
  });
});
