import { describe, expect, it } from "vitest";
import type { GivenWeather } from "../situation.ts";
import { forecastTrip } from "./forecast-trip.ts";
import { mayHighlands } from "./try-trips.ts";
import type { TripInput } from "./types.ts";

const may = mayHighlands();
const loch = may.trip.stops[0]!.place;

function given(days: readonly string[], minC: number, maxC: number, more: object = {}): TripInput {
  const weather: GivenWeather = {
    source: "Invented weather office",
    issued: "2026-05-08T18:00",
    days: days.map((date) => ({
      date,
      latitudeDeg: loch.latitudeDeg,
      longitudeDeg: loch.longitudeDeg,
      minC,
      maxC,
      ...more,
    })),
  };
  return { ...may, runs: 200, trip: { ...may.trip, weather } };
}
const COLD = ["2026-05-09", "2026-05-10", "2026-05-11"];

describe("weather that somebody forecast", () => {
  it("stands in for the climate on its days and leaves the others as they were", () => {
    const climate = forecastTrip({ ...may, runs: 200 }).result;
    const cold = forecastTrip(given(COLD, -4, 2)).result;
    const at = (forecast: typeof climate, local: string) =>
      forecast.outsideC.p50[forecast.axis.at.indexOf(local)]!;
    expect(at(cold, "2026-05-11T04:00")).toBeLessThan(0);
    expect(at(climate, "2026-05-11T04:00")).toBeGreaterThan(2);
    expect(at(cold, "2026-05-15T16:00")).toBeCloseTo(at(climate, "2026-05-15T16:00"), 9);
    expect(cold.notes[0]).toMatchObject({ stop: 0, forecastDays: 3 });
  });

  it("is more certain than the climate, and less so the further ahead it looks", () => {
    const width = (input: TripInput) => {
      const { outsideC, axis } = forecastTrip(input).result;
      const k = axis.at.indexOf("2026-05-11T04:00");
      return outsideC.p90[k]! - outsideC.p10[k]!;
    };
    const near = width(given(COLD, 4, 12));
    const early = { ...given(COLD, 4, 12) };
    const far = width({
      ...early,
      trip: { ...early.trip, weather: { ...early.trip.weather!, issued: "2026-05-02T06:00" } },
    });
    expect(near).toBeLessThan(far);
    expect(far).toBeLessThan(width({ ...may, runs: 200 }));
  });

  it("does not count for a place further than 30 km away", () => {
    const elsewhere = given(COLD, -4, 2, { latitudeDeg: loch.latitudeDeg + 0.4 });
    expect(forecastTrip(elsewhere).result.outsideC).toEqual(
      forecastTrip({ ...may, runs: 200 }).result.outsideC,
    );
  });

  it("brings the radiation it tells to the panel", () => {
    const level = (sunKwhM2: number) => {
      const { stores, axis } = forecastTrip(given(COLD, 4, 12, { sunKwhM2 })).result;
      const battery = stores.find(({ store }) => store === "battery12")!;
      return battery.band.p50[axis.at.indexOf("2026-05-10T18:00")]!;
    };
    expect(level(7)).toBeGreaterThan(level(0.5));
  });

  it("names the field where the maximum is below the minimum", () => {
    expect(() => forecastTrip(given(COLD, 9, 3))).toThrow(/weather\.days\.0\.maxC/);
  });
});
