import { describe, expect, it } from "vitest";
import { forecastTrip } from "./forecast-trip.ts";
import { mayHighlands, newYearMountains, panelVan, stopAt } from "./try-trips.ts";
import type { TripInput } from "./types.ts";

/** What people in the trade say, without a printed source: the forecast must come out near it. */
const van = panelVan();
const plain = (input: TripInput): TripInput => ({ ...input, runs: 1, spread: false });
const storeOf = (input: TripInput, id: string) =>
  forecastTrip(plain(input)).result.stores.find(({ store }) => store === id)!;

describe("facts of the trade, common practice without a source", () => {
  it("ten litres of DEF go 6,000 to 8,000 km", () => {
    const may = mayHighlands();
    const { draws } = storeOf(may, "def");
    const km = may.trip.stops.reduce(
      (sum, { drive }) => sum + drive.distanceKm,
      may.trip.returnDrive.distanceKm,
    );
    const kmOnTen = (10 * km) / draws[0]!.amount.value;
    expect(kmOnTen).toBeGreaterThan(6000);
    expect(kmOnTen).toBeLessThan(8000);
  });

  it("a tank of DEF goes about 1,200 miles where it holds 10 L and the engine doses 5 % of its fuel", () => {
    const may = mayHighlands();
    const dose = (0.05 * van.consumption.litresPer100Km) / 100;
    const spec = { tankLitres: 10, litresPer1000Km: 1000 * dose };
    const systems = van.systems.map((system) => (system.id === "def" ? { ...system, spec } : system));
    // 240 miles a day until it is empty
    const stops = [11, 12, 13, 14, 15].map((day) => ({
      ...stopAt(`2026-05-${day}T18:00`, `2026-05-${day + 1}T08:00`, true),
      drive: { distanceKm: 386, minutes: 480 },
    }));
    const trip = { ...may.trip, depart: "2026-05-11T08:00", return: "2026-05-16T18:00", stops };
    const returnDrive = { distanceKm: 386, minutes: 480 };
    const { trouble } = storeOf(
      { ...may, vehicle: { ...van, systems }, trip: { ...trip, returnDrive } },
      "def",
    );
    // 240 miles from 10:00 to 18:00 on each day before, and on the way of the fifth
    expect(trouble.p50At?.slice(0, 10)).toBe("2026-05-15");
    const hour = Number(trouble.p50At?.slice(11, 13)) + Number(trouble.p50At?.slice(14, 16)) / 60;
    const miles = 4 * 240 + ((hour - 10) / 8) * 240;
    expect(miles).toBeGreaterThan(1100);
    expect(miles).toBeLessThan(1250);
  });

  it("a cassette lasts two people three to four days", () => {
    const input = newYearMountains();
    const { trouble } = storeOf(input, "cassette");
    const days = (Date.parse(`${trouble.p50At}Z`) - Date.parse(`${input.trip.depart}Z`)) / 86_400_000;
    expect(days).toBeGreaterThan(2.5);
    expect(days).toBeLessThan(4.2);
  });

  it("a spare cassette doubles that, and the forecast tells when to change", () => {
    const { trip, ...input } = newYearMountains();
    const with_ = (spareCassettes: number): TripInput => ({
      ...input,
      vehicle: {
        ...van,
        systems: van.systems.map((system) =>
          system.id === "toilet" ? { ...system, spec: { spareCassettes } } : system,
        ),
      },
      trip: {
        ...trip,
        return: "2027-01-08T16:00",
        stops: [{ ...trip.stops[0]!, leave: "2027-01-08T11:00" }],
      },
    });
    const days = (spares: number) =>
      (Date.parse(`${storeOf(with_(spares), "cassette").trouble.p50At}Z`) - Date.parse(`${trip.depart}Z`)) /
      86_400_000;
    expect(days(1) / days(0)).toBeGreaterThan(1.8);
    expect(days(1) / days(0)).toBeLessThan(2.3);
    const change = forecastTrip(plain(with_(1))).findings.find(({ code }) => code === "trip.cassetteChange")!;
    const at = Date.parse(`${change.facts.at}Z`);
    const full = Date.parse(`${storeOf(with_(0), "cassette").trouble.p50At}Z`);
    expect(Math.abs(at - full)).toBeLessThan(3 * 3_600_000);
    expect(forecastTrip(plain(with_(0))).findings.map(({ code }) => code)).not.toContain(
      "trip.cassetteChange",
    );
  });

  it("on a 16 A post electric stages of 1 and 2 kW both run; 2 kW hold a van without gas on a mild night, 1 kW nearly", () => {
    const gasKg = (input: TripInput, electricW: number, settings: TripInput["trip"]["settings"] = {}) => {
      const systems = van.systems.map((system) =>
        system.id === "heater" ? { ...system, spec: { ...system.spec, electricW } } : system,
      );
      const stops = input.trip.stops.map((stop) => ({
        ...stop,
        acts: ["plugIn" as const],
        pitch: { ...stop.pitch, postAmperes: 16 },
      }));
      const trip = { ...input.trip, stops, settings };
      const gas = storeOf({ ...input, vehicle: { ...van, systems }, trip }, "lpg");
      return gas.draws.find(({ kind }) => kind === "heating")?.amount.value ?? 0;
    };
    const stay = stopAt("2026-05-09T18:00", "2026-05-16T06:00", true);
    const may = { ...mayHighlands(), trip: { ...mayHighlands().trip, stops: [stay] } };
    const winter = newYearMountains();
    const burner = gasKg(may, 2000, { heater: { source: "gas" } });
    expect(burner).toBeGreaterThan(2);
    expect(gasKg(may, 2000)).toBeLessThan(0.05 * burner);
    expect(gasKg(may, 1000)).toBeLessThan(0.2 * burner);
    // told to run at half of its 2 kW it is a heater of 1 kW, and each stage saves gas in a winter night
    const lower = gasKg(winter, 2000, { heater: { electricW: 1000 } });
    expect(lower).toBeCloseTo(gasKg(winter, 1000), 6);
    expect(lower).toBeGreaterThan(2 * gasKg(winter, 2000));
    expect(gasKg(winter, 2000, { heater: { source: "gas" } })).toBeGreaterThan(lower + 2);
  });

  it("hot water near 40 °C, the economical setting, takes about two thirds of the gas of 60 °C", () => {
    const gasAt = (setC: number) => {
      const input = newYearMountains();
      const gas = storeOf({ ...input, trip: { ...input.trip, settings: { "hot-water": { setC } } } }, "lpg");
      return gas.draws.find(({ kind }) => kind === "hotWater")!.amount.value;
    };
    const ratio = gasAt(40) / gasAt(60);
    expect(ratio).toBeGreaterThan(0.5);
    expect(ratio).toBeLessThan(0.95);
  });
});
