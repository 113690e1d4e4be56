import { describe, expect, it } from "vitest";
import { forecastTrip } from "./forecast-trip.ts";
import { mayHighlands, newYearMountains, panelVan, stopAt } from "./try-trips.ts";
import type { TripInput } from "./types.ts";

/** One pitch for some days in May, with a cab; the drive there is as long as it is said. */
function standing(days: number, spec: Record<string, unknown> = {}, runs = 100): TripInput {
  const { trip, ...may } = mayHighlands();
  const leave = new Date(Date.UTC(2026, 4, 9 + days, 10)).toISOString().slice(0, 16);
  const back = new Date(Date.UTC(2026, 4, 9 + days, 16)).toISOString().slice(0, 16);
  const van = panelVan();
  return {
    ...may,
    runs,
    vehicle: { ...van, systems: [...van.systems, { id: "cab", kind: "cab", spec }] },
    trip: { ...trip, stops: [stopAt("2026-05-09T18:00", leave, true)], return: back },
  };
}
const starterOf = (input: TripInput) =>
  forecastTrip(input).result.stores.find(({ store }) => store === "starterBattery")!;
const told = (input: TripInput) =>
  forecastTrip(input).findings.find(({ code }) => code === "trip.starterBatteryTrouble");

describe("the starter battery through a trip", () => {
  it("is no news on a fortnight on one pitch", () => {
    expect(told(standing(14))).toBeUndefined();
    expect(starterOf(standing(14)).trouble.chance).toBe(0);
  });

  it("is told of where a vehicle stands for five weeks, with what mends it", () => {
    const finding = told(standing(35))!;
    expect(finding).toMatchObject({ gate: "resources", about: "starterBattery" });
    expect(finding.mends.map(({ code }) => code)).toEqual(["trip.driveAnHour"]);
  });

  it("lasts less where more is drawn while it stands", () => {
    const chance = (starterStandingMa: number) =>
      starterOf(standing(14, { starterStandingMa })).trouble.chance;
    expect([chance(40), chance(300)]).toEqual([0, 1]);
    expect(chance(120)).toBeGreaterThan(0);
  });

  it("is charged by the road, and only then", () => {
    const { band, stops, capacity } = starterOf({ ...standing(14), runs: 1, spread: false });
    const [arrive, home] = [stops[0]!, stops[1]!];
    expect(arrive.arriveP50).toBeGreaterThan(0.99 * capacity.value);
    // two weeks at 40 mA and its own loss are 14.5 Ah
    expect((arrive.arriveP50 - arrive.leaveP50!) / 12).toBeCloseTo(14.5, 0);
    expect(home.arriveP50).toBeGreaterThan(arrive.leaveP50! + 100);
    // a last halt before the drive takes no more than a few hours' worth
    expect(Math.min(...band.p50)).toBeGreaterThan(arrive.leaveP50! - 3);
  });

  it("of a vehicle that drives on its battery is charged from that", () => {
    const input = standing(14);
    const drive = { id: "drive", kind: "tractionBattery", spec: { usableKwh: 75, kwhPer100Km: 32 } };
    const systems = input.vehicle.systems.filter(({ kind }) => kind !== "fuel").concat(drive);
    const { stops } = starterOf({ ...input, runs: 1, spread: false, vehicle: { ...input.vehicle, systems } });
    expect(stops[1]!.arriveP50).toBeGreaterThan(stops[0]!.leaveP50! + 100);
  });

  it("moves nothing else but what the alternator has left", () => {
    const without = newYearMountains();
    const systems = [...without.vehicle.systems, { id: "cab", kind: "cab", spec: {} }];
    const with_ = { ...without, vehicle: { ...without.vehicle, systems } };
    const of = (input: TripInput) => forecastTrip({ ...input, runs: 20 }).result.stores;
    const mine = of(with_).filter(({ store }) => store !== "starterBattery");
    for (const [k, store] of of(without).entries()) {
      if (store.store === "battery12") continue;
      expect(mine[k]!.band).toEqual(store.band);
    }
  });
});
