import { describe, expect, it } from "vitest";
import { forecastTrip } from "./forecast-trip.ts";
import { mayHighlands, newYearMountains, panelVan, stopAt } from "./try-trips.ts";
import type { TripInput } from "./types.ts";

const setAt = (input: TripInput, stop = 0) => forecastTrip({ ...input, runs: 20 }).result.stops[stop]!.set!;

/** One night of a month; the post may be anything. */
function oneNight(month: string, postAmperes: number): TripInput {
  const stop = stopAt(`2026-${month}-10T16:00`, `2026-${month}-11T10:00`, true);
  const base = mayHighlands();
  const trip = {
    ...base.trip,
    depart: `2026-${month}-10T12:00`,
    return: `2026-${month}-11T15:00`,
    stops: [
      { ...stop, pitch: { ...stop.pitch, postAmperes }, acts: postAmperes > 0 ? ["plugIn" as const] : [] },
    ],
  };
  return { ...base, trip };
}

function withSystem(input: TripInput, id: string, spec: Record<string, unknown>): TripInput {
  const van = panelVan();
  const systems = van.systems.map((one) =>
    one.id === id ? { ...one, spec: { ...one.spec, ...spec } } : one,
  );
  return { ...input, vehicle: { ...van, systems } };
}

describe("how to set what is set by hand at a stop", () => {
  it("is gas for heater and fridge without a post, the mains with one, as much as fits", () => {
    expect(setAt(oneNight("12", 0)).map(({ kind, from, stage }) => [kind, from, stage])).toEqual([
      ["heating", "gas", null],
      ["fridge", "gas", null],
    ]);
    const [heater, fridge] = setAt(oneNight("12", 6));
    expect(heater).toMatchObject({ from: "mains", rest: "gas" });
    expect(heater!.stage!.value).toBeLessThan(1800);
    expect(fridge).toMatchObject({ from: "mains", rest: null });
  });

  it("says nothing of the heater where the nights are warm, nor of a fridge that has one way only", () => {
    const spain = { name: "By the sea", country: "ES", latitudeDeg: 37, longitudeDeg: -2, elevationM: 5 };
    const input = withSystem(oneNight("07", 0), "fridge", { type: "compressor" });
    const stops = input.trip.stops.map((stop) => ({ ...stop, place: spain }));
    expect(setAt({ ...input, trip: { ...input.trip, depot: spain, stops } })).toEqual([]);
  });

  it("is fuel for a diesel heater, and nothing where only a post could feed it", () => {
    expect(setAt(withSystem(oneNight("12", 0), "heater", { source: "diesel" }))[0]!.from).toBe("fuel");
    expect(setAt(withSystem(oneNight("12", 0), "heater", { source: "electric" }))[0]!.from).toBe("none");
  });

  it("states the temperatures that the trip sets at that stop alone", () => {
    const input = newYearMountains();
    const stops = input.trip.stops.map((stop, k) =>
      k === 0 ? { ...stop, settings: { heater: { dayC: 17, nightC: 10 } } } : stop,
    );
    const [heater] = setAt({ ...input, trip: { ...input.trip, stops } });
    expect([heater!.dayC!.value, heater!.nightC!.value]).toEqual([17, 10]);
  });
});
