import { describe, expect, it } from "vitest";
import { forecastTrip } from "./forecast-trip.ts";
import { leastLeft, tellTrip } from "./tell-trip.ts";
import { mayHighlands, newYearMountains, stopAt } from "./try-trips.ts";
import type { TripInput } from "./types.ts";

const coast = { name: "South coast", country: "ES", latitudeDeg: 36.7, longitudeDeg: -4.4, elevationM: 10 };
const may = mayHighlands();

/** Four August nights in the south, where no night falls below 18 °C. */
function summer(plugged: boolean): TripInput {
  const stops = [
    stopAt("2026-08-09T18:00", "2026-08-11T10:00", plugged, coast),
    stopAt("2026-08-11T15:00", "2026-08-13T10:00", plugged, coast),
  ];
  const trip = { ...may.trip, stops, depart: "2026-08-09T14:00", return: "2026-08-13T18:00" };
  return { ...may, runs: 150, trip: { ...trip, timeZone: "Europe/Madrid" } };
}
const ids = (stores: readonly { readonly store: string }[]) => stores.map(({ store }) => store);

describe("what of a forecast is told", () => {
  it("trouble first, the likeliest before the rest", () => {
    const { result } = forecastTrip({ ...newYearMountains(), runs: 150 });
    const { news, shown, quiet } = tellTrip(result);
    expect(news.length).toBeGreaterThan(0);
    expect(news.map(({ trouble }) => trouble.chance)).toEqual(
      news.map(({ trouble }) => trouble.chance).sort((a, b) => b - a),
    );
    expect(ids(shown)).toEqual(expect.arrayContaining(ids(news)));
    expect([...ids(shown), ...ids(quiet)].sort()).toEqual(ids(result.stores).sort());
  });

  it("no battery worry on a post every night, and no strip for DEF that lasts", () => {
    const input = summer(true);
    // it leaves with a battery that is not full: the post sees to it
    const { result, findings } = forecastTrip({
      ...input,
      trip: { ...input.trip, departWith: { battery12: 0.6 } },
    });
    const { shown, quiet } = tellTrip(result);
    expect(ids(shown)).not.toContain("battery12");
    expect(ids(quiet)).toEqual(expect.arrayContaining(["battery12", "def"]));
    expect(findings.map(({ code }) => code).filter((code) => code.startsWith("trip.battery"))).toEqual([]);
  });

  it("no word of DEF for a vehicle without it", () => {
    const vehicle = { ...may.vehicle, systems: may.vehicle.systems.filter(({ kind }) => kind !== "def") };
    const { result, findings } = forecastTrip({ ...summer(false), vehicle });
    expect(ids(result.stores)).not.toContain("def");
    expect(JSON.stringify(findings)).not.toMatch(/def/i);
  });

  it("no talk of heating at nights of 20 °C, whatever else is in trouble", () => {
    const input = summer(false);
    const weak = { ...input, trip: { ...input.trip, departWith: { battery12: 0.05, lpg: 0.02 } } };
    const { findings, result } = forecastTrip(weak);
    expect(ids(tellTrip(result).news)).toEqual(expect.arrayContaining(["lpg"]));
    expect(JSON.stringify(findings)).not.toMatch(/heat/i);
  });

  it("but it is told of on a winter night off the post", () => {
    const winter = newYearMountains();
    const { findings } = forecastTrip({ ...winter, runs: 150 });
    const battery = findings.find(({ code }) => code === "trip.batteryTrouble" || code === "trip.batteryLow");
    expect(battery!.mends.map(({ code }) => code)).toContain("trip.lowerNightHeating");
  });

  it("what is left is counted from the end where the trouble is", () => {
    const { result } = forecastTrip(summer(false));
    const cassette = result.stores.find(({ store }) => store === "cassette")!;
    const most = Math.max(...cassette.band.p90);
    expect(leastLeft(cassette)).toBeCloseTo(1 - most / cassette.capacity.value, 9);
  });
});
