import { describe, expect, it } from "vitest";
import { BadInput } from "../../base/bad-input.ts";
import type { StoreId } from "../../stores/stores.ts";
import { forecastTrip } from "./forecast-trip.ts";
import { mayHighlands, newYearMountains, panelVan, stopAt } from "./try-trips.ts";
import type { TripForecast, TripInput } from "./types.ts";

const storeOf = ({ stores }: TripForecast, id: StoreId) => stores.find(({ store }) => store === id)!;
const codes = (input: TripInput) => forecastTrip(input).findings.map(({ code }) => code);
const without = (input: TripInput, id: string): TripInput => ({
  ...input,
  vehicle: { ...input.vehicle, systems: input.vehicle.systems.filter((system) => system.id !== id) },
});
const problems = (input: TripInput): readonly string[] => {
  try {
    forecastTrip(input);
  } catch (error) {
    if (error instanceof BadInput) return error.problems.map(({ path }) => path);
    throw error;
  }
  return [];
};

describe("New Year in the hills, four nights without hook-up", () => {
  const { result, findings } = forecastTrip(newYearMountains());
  const battery = storeOf(result, "battery12");

  it("puts the leisure battery in trouble on the second night", () => {
    expect(battery.trouble.chance).toBeGreaterThan(0.9);
    expect(battery.trouble.p50At! > "2026-12-30T12:00").toBe(true);
    expect(battery.trouble.p50At! < "2026-12-31T09:00").toBe(true);
    const found = findings.find(({ code }) => code === "trip.batteryTrouble")!;
    expect(found).toMatchObject({
      gate: "resources",
      severity: "condition",
      facts: { night: 2, mainDraw: "heating" },
    });
    expect(found.mends.map(({ code }) => code)).toContain("trip.hookUpEverySecondNight");
  });

  it("uses about 32 Ah a day of the 47 Ah above the cut-off", () => {
    expect(battery.capacityAh!.value).toBeCloseTo(47.5, 6);
    expect(battery.usePerDayAh!.value).toBeGreaterThan(26);
    expect(battery.usePerDayAh!.value).toBeLessThan(38);
  });

  it("warns of the frost valve, since the heater stops with the battery", () => {
    expect(findings.find(({ code }) => code === "trip.frostValve")?.gate).toBe("season");
  });

  it("has gas enough in two cylinders of propane, and none that flows from butane", () => {
    expect(storeOf(result, "lpg").trouble.chance).toBe(0);
    const van = panelVan();
    const butane = van.systems.map((system) =>
      system.kind === "lpg" ? { ...system, spec: { ...system.spec, fuel: "butane" } } : system,
    );
    expect(codes({ ...newYearMountains(), vehicle: { ...van, systems: butane } })).toContain(
      "trip.butaneCold",
    );
  });

  it("lasts on hook-up", () => {
    const input = newYearMountains();
    const stops = input.trip.stops.map(({ arrive, leave, place }) => stopAt(arrive, leave, true, place));
    const plugged = forecastTrip({ ...input, trip: { ...input.trip, stops } });
    expect(storeOf(plugged.result, "battery12").trouble.chance).toBe(0);
    expect(plugged.findings).toEqual([]);
  });
});

describe("a loop of seven nights in the Highlands in May", () => {
  const { result, findings } = forecastTrip(mayHighlands());

  it("lasts, at about 20 Ah a day", () => {
    const battery = storeOf(result, "battery12");
    expect(battery.usePerDayAh!.value).toBeGreaterThan(15);
    expect(battery.usePerDayAh!.value).toBeLessThan(25);
    expect(result.lastsChance).toBeGreaterThan(0.9);
    expect(findings.filter(({ severity }) => severity !== "note")).toEqual([]);
  });

  it("names the stops, their nights and how cold they may be", () => {
    expect(result.stops.map(({ nights }) => nights)).toEqual([2, 2, 1, 2]);
    expect(result.stops.map(({ onHookUp }) => onHookUp)).toEqual([false, true, false, true]);
    for (const { coldestNightC } of result.stops) {
      expect(coldestNightC!.p50).toBeGreaterThan(-4);
      expect(coldestNightC!.p50).toBeLessThan(9);
      expect(coldestNightC!.p10).toBeLessThan(coldestNightC!.p50);
    }
  });

  it("has a point for every hour and as many local times", () => {
    expect(result.axis.hours).toHaveLength(7 * 24 - 4 + 1);
    expect(result.axis.at[0]).toBe("2026-05-09T14:00");
    expect(result.axis.at.at(-1)).toBe("2026-05-16T10:00");
    expect(storeOf(result, "lpg").band.p50).toHaveLength(result.axis.hours.length);
  });

  it("empties waste and cassette where the pitch allows it", () => {
    const waste = storeOf(result, "wasteWater");
    expect(waste.stops[0]!.leaveP50!).toBeGreaterThan(20);
    expect(waste.stops[1]!.leaveP50!).toBe(0);
  });

  it("leaves out an act that the pitch does not offer, and says so", () => {
    const input = mayHighlands();
    const stops = input.trip.stops.map((stop) => ({ ...stop, acts: ["fillWater" as const] }));
    const found = forecastTrip({ ...input, trip: { ...input.trip, stops } }).findings;
    expect(found.filter(({ code }) => code === "trip.actNotOffered")).toHaveLength(2);
  });
});

describe("the forecast", () => {
  it("draws the same for the other systems when one that they do not meet is taken out", () => {
    const whole = forecastTrip(mayHighlands()).result;
    const fewer = forecastTrip(without(mayHighlands(), "def")).result;
    for (const id of ["battery12", "lpg", "freshWater", "cassette"] as const) {
      expect(storeOf(fewer, id)).toEqual(storeOf(whole, id));
    }
  });

  it("with no spread is one plain life, whatever the seed", () => {
    const plain = (seed: number) =>
      forecastTrip({ ...mayHighlands(), runs: 3, spread: false, seed }).result.stores;
    expect(plain(1)).toEqual(plain(99));
    for (const { band } of plain(1)) expect(band.p10).toEqual(band.p90);
  });

  it("forecasts no gas for a vehicle without any", () => {
    const { stores } = forecastTrip(without(mayHighlands(), "gas")).result;
    expect(stores.some(({ store }) => store === "lpg")).toBe(false);
  });

  it("says that a cylinder for exchange is commonly not changed abroad, and nothing of a refillable one", () => {
    const { trip, ...input } = newYearMountains();
    const told = (country: string, arrangement: string) => {
      const [stop] = trip.stops;
      const there = {
        ...stop!,
        place: { ...stop!.place, country },
        pitch: { ...stop!.pitch, lpgExchange: true },
        acts: ["exchangeLpg" as const],
      };
      const systems = panelVan().systems.map((one) =>
        one.id === "gas" ? { ...one, spec: { ...one.spec, arrangement } } : one,
      );
      const { findings } = forecastTrip({
        ...input,
        runs: 2,
        vehicle: { ...panelVan(), systems },
        trip: { ...trip, stops: [there] },
      });
      return findings.some(({ code }) => code === "trip.exchangeAbroad");
    };
    expect(told("FR", "exchange")).toBe(true);
    expect(told("GB", "exchange")).toBe(false);
    expect(told("FR", "refillable")).toBe(false);
  });

  it("counts hours over the change of the clock", () => {
    const input = newYearMountains();
    const spring = { ...input.trip, depart: "2026-03-28T12:00", return: "2026-03-29T12:00", stops: [] };
    const { axis } = forecastTrip({ ...input, trip: spring, runs: 2 }).result;
    expect(axis.hours.at(-1)).toBe(23);
    expect(axis.at[12]).toBe("2026-03-29T00:00");
    expect(axis.at[14]).toBe("2026-03-29T03:00");
  });

  it("names every field of a bad input", () => {
    const input = mayHighlands();
    const [first, ...others] = input.trip.stops;
    const reversed = { ...first!, leave: "2026-05-08T10:00" };
    expect(problems({ ...input, trip: { ...input.trip, stops: [reversed, ...others] } })).toContain(
      "trip.stops.0.leave",
    );
    expect(problems({ ...input, trip: { ...input.trip, return: "2026-05-01T10:00" } })).toContain(
      "trip.return",
    );
    expect(problems({ ...input, trip: { ...input.trip, timeZone: "Nowhere/Else" } })).toEqual([
      "trip.timeZone",
    ]);
    expect(problems({ ...input, trip: { ...input.trip, depart: "2026-02-30T10:00" } })).toEqual([
      "trip.depart",
    ]);
    expect(problems({ ...input, trip: { ...input.trip, settings: { heatr: { dayC: 20 } } } })).toEqual([
      "trip.settings.heatr",
    ]);
    expect(problems({ ...input, runs: 0 })).toEqual(["runs"]);
    const systems = input.vehicle.systems.map((system) =>
      system.kind === "freshWater" ? { ...system, spec: { litres: -5 } } : system,
    );
    expect(problems({ ...input, vehicle: { ...input.vehicle, systems } })).toEqual([
      "vehicle.systems.9.spec.litres",
    ]);
  });

  it("buys fuel within a drive that is longer than a tank", () => {
    const may = mayHighlands();
    const [first, ...others] = may.trip.stops;
    const far = { ...first!, drive: { distanceKm: 1400, minutes: 18 * 60 } };
    const long = {
      ...may,
      runs: 20,
      trip: { ...may.trip, depart: "2026-05-08T14:00", stops: [far, ...others] },
    };
    const { result } = forecastTrip(long);
    const fuel = result.stores.find(({ store }) => store === "fuel")!;
    expect(fuel.trouble.p50At).toBeNull();
    const tank = fuel.capacity.value;
    expect((1400 * 10.5) / 100).toBeGreaterThan(tank);
    expect(Math.min(...fuel.band.p10)).toBeGreaterThan(0.05 * tank);
  });
});
