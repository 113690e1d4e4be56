import { describe, expect, it } from "vitest";
import { forecastTrip } from "../trip/forecast-trip.ts";
import { mayHighlands, newYearMountains } from "../trip/try-trips.ts";
import type { Reading, TripForecast, TripInput } from "../trip/types.ts";
import { compareUse } from "./compare-use.ts";
import type { Measured, UseComparison } from "./types.ts";

type Store = Reading["store"];
/** what the plain forecast of a trip holds at some of its hours, as if read there exactly */
function readOff(input: TripInput, stores: readonly Store[], at: readonly string[]): Reading[] {
  const plain: TripForecast = forecastTrip({ ...input, runs: 1, spread: false }).result;
  return stores.flatMap((store) => {
    const found = plain.stores.find((each) => each.store === store)!;
    return at.map((when): Reading => {
      const k = plain.axis.at.indexOf(when);
      if (k < 0) throw new RangeError(`no point at ${when}`);
      return { store, value: found.band.p50[k]!, unit: found.unit, at: when, sd: 0.001 };
    });
  });
}
const winter: TripInput = { ...newYearMountains(), runs: 200 };
const FROM = "2026-12-29T18:00";
const TO = "2026-12-30T12:00";
const compare = (measured: Partial<Measured>, trip = winter) =>
  compareUse({ trip, measured: { readings: [], added: [], ...measured } });
const storeOf = (found: readonly UseComparison[], id: Store) => found.find(({ store }) => store === id)!;

describe("measured use beside the forecast of the same hours", () => {
  it("finds its own middle life in the middle of its forecast", () => {
    const readings = readOff(
      winter,
      ["battery12", "lpg", "freshWater", "wasteWater", "cassette"],
      [FROM, TO],
    );
    const { comparisons } = compare({ readings });
    expect(comparisons).toHaveLength(5);
    for (const { store, used, quantiles } of comparisons) {
      const below = quantiles.filter((level) => level < used.value).length;
      expect(below, store).toBeGreaterThan(4);
      expect(below, store).toBeLessThan(15);
      expect([...quantiles].sort((a, b) => a - b)).toEqual(quantiles);
    }
  });

  it("adds what was put in, and takes a filling of unknown amount as no measurement", () => {
    const may: TripInput = { ...mayHighlands(), runs: 40 };
    // a post and a tap from the 11th: filled there
    const full: Reading = { store: "freshWater", value: 60, unit: "L", at: "2026-05-11T12:00" };
    const later: Reading = { ...full, value: 70, at: "2026-05-12T09:00" };
    const unknown = compare({ readings: [full, later] }, may);
    expect(unknown.comparisons).toEqual([]);
    expect(unknown.leftOut).toContainEqual({ store: "freshWater", why: "filledUnknown" });
    const told = compare(
      {
        readings: [full, later].map((each) => ({ ...each, sd: 1 })),
        added: [{ store: "freshWater", amount: 25, at: "2026-05-11T16:00" }],
      },
      may,
    );
    expect(storeOf(told.comparisons, "freshWater").used.value).toBeCloseTo(15, 9);
  });

  it("measures a battery only where nothing charges it by wire", () => {
    const may: TripInput = { ...mayHighlands(), runs: 40 };
    const at = (value: number, when: string): Reading => ({ store: "battery12", value, unit: "%", at: when });
    const { leftOut } = compare({ readings: [at(90, "2026-05-11T16:00"), at(90, "2026-05-12T09:00")] }, may);
    expect(leftOut).toContainEqual({ store: "battery12", why: "charged" });
  });

  it("leaves out a store that runs out in the forecast: it would say how much there was", () => {
    const empty = { ...winter, trip: { ...winter.trip, departWith: { freshWater: 0.3 } } };
    const read = (value: number, at: string): Reading => ({
      store: "freshWater",
      value,
      unit: "L",
      at,
      sd: 1,
    });
    const { leftOut } = compare({ readings: [read(28, FROM), read(2, "2026-12-31T20:00")] }, empty);
    expect(leftOut).toContainEqual({ store: "freshWater", why: "ranOut" });
  });

  it("begins each window at what was read there, whatever the forecast had left", () => {
    const read = (value: number, at: string): Reading => ({
      store: "battery12",
      value,
      unit: "%",
      at,
      sd: 1,
    });
    const readings = [read(95, FROM), read(60, TO)];
    const flat = { ...winter, trip: { ...winter.trip, departWith: { battery12: 0 } } };
    const [full, empty] = [winter, flat].map((trip) => compare({ readings }, trip));
    expect(storeOf(full!.comparisons, "battery12").mean.value).toBeGreaterThan(100);
    const times = (share: typeof full) => storeOf(share!.comparisons, "battery12").mean.value;
    // only the cabin of the hours before remembers
    expect(times(empty) / times(full)).toBeCloseTo(1, 1);
  });

  it("measures a battery that drives from the start of a drive to its end, and with a charge point's bill", () => {
    const may = mayHighlands();
    const spec = { usableKwh: 75, kwhPer100Km: 30, postChargeA: 10, fastChargeKw: 80 };
    const systems = may.vehicle.systems.filter(({ kind }) => kind !== "fuel" && kind !== "def");
    const vehicle = {
      ...may.vehicle,
      fuel: "electric" as const,
      systems: [...systems, { id: "traction", kind: "tractionBattery", spec }],
    };
    const trip: TripInput = { ...may, vehicle, runs: 100 };
    const [stop, onPost] = trip.trip.stops;
    const at = (value: number, when: string): Reading => ({
      store: "tractionBattery",
      value,
      unit: "%",
      at: when,
      sd: 1,
    });
    const readings = [at(100, trip.trip.depart), at(70, stop!.arrive)];
    const found = storeOf(compare({ readings }, trip).comparisons, "tractionBattery");
    expect(found.used.value).toBeCloseTo(0.3 * 75_000, 6);
    const road = 300 * stop!.drive.distanceKm;
    expect(found.mean.value / road).toBeGreaterThan(0.95);
    expect(found.mean.value / road).toBeLessThan(1.35);
    const added = [{ store: "tractionBattery" as const, amount: 10_000, at: stop!.arrive }];
    expect(storeOf(compare({ readings, added }, trip).comparisons, "tractionBattery").used.value).toBeCloseTo(
      0.3 * 75_000 + 10_000,
      6,
    );
    // further than the battery goes: without the bill nobody knows what a charge point gave
    const far = { ...stop!, drive: { distanceKm: 300, minutes: 230 } };
    const farther = { ...trip, trip: { ...trip.trip, stops: [far, ...trip.trip.stops.slice(1)] } };
    const charged = { store: "tractionBattery" as const, why: "charged" as const };
    expect(compare({ readings }, farther).leftOut).toContainEqual(charged);
    expect(compare({ readings, added }, farther).leftOut).not.toContainEqual(charged);
    // over a night on a post nobody knows what went in
    const night = compare({ readings: [at(70, onPost!.arrive), at(90, onPost!.leave)] }, trip);
    expect(night.leftOut).toContainEqual(charged);
  });

  it("leaves out what the gauge cannot tell, by the forecast alone", () => {
    const gauge = (value: number, at: string): Reading => ({ store: "freshWater", value, unit: "%", at });
    const hour = compare({
      readings: [gauge(90, "2026-12-29T17:00"), gauge(10, "2026-12-29T18:00")],
    });
    expect(hour.leftOut).toContainEqual({ store: "freshWater", why: "tooLittle" });
    expect(hour.comparisons).toEqual([]);
  });

  it("holds fuel and DEF to the kilometres by the odometer", () => {
    const full = (store: Store, at: string): Reading => ({ store, value: 100, unit: "%", at, sd: 1 });
    const { depart, return: back, stops, returnDrive } = winter.trip;
    const readings = [full("fuel", depart), full("fuel", back)];
    const added = [{ store: "fuel" as const, amount: 60, at: back }];
    const planned = stops.reduce((sum, { drive }) => sum + drive.distanceKm, returnDrive.distanceKm);
    const fuel = (distanceKm: number) =>
      storeOf(compare({ readings, added, distanceKm }).comparisons, "fuel").mean.value;
    expect(fuel(2 * planned) / fuel(planned)).toBeCloseTo(2, 6);
    expect(fuel(planned)).toBeCloseTo((planned * 10.5) / 100, 0);
  });

  it("takes the more exact of two readings at one time", () => {
    const at = (value: number, when: string, sd: number): Reading => ({
      store: "lpg",
      value,
      unit: "kg",
      at: when,
      sd,
    });
    const exact = [at(12, winter.trip.depart, 0.1), at(4, "2027-01-01T20:00", 0.1)];
    const rough = [at(9, winter.trip.depart, 2), at(7, "2027-01-01T20:00", 2)];
    const roomy = (readings: Reading[]) => compare({ readings }).comparisons;
    expect(roomy([...rough, ...exact])).toEqual(roomy(exact));
  });

  it("is with a rate what it is without, times the rate and wider by its spread: what judging takes for granted", () => {
    const readings = readOff(winter, ["lpg", "freshWater", "cassette"], [FROM, TO]);
    const rate = { times: 1.2, sd: 0.15, width: 1 };
    const rates = { lpg: rate, freshWater: rate, cassette: rate };
    const many = { ...winter, runs: 2000 };
    const plain = compare({ readings }, many).comparisons;
    const rated = compare({ readings }, { ...many, rates }).comparisons;
    for (const { store, quantiles, mean } of plain) {
      const [found] = rated.filter((each) => each.store === store);
      expect(found!.mean.value / mean.value, store).toBeCloseTo(1.2 * Math.exp(0.15 ** 2 / 2), 1);
      const spread = (of: readonly number[]) => Math.log(of[17]! / of[1]!) / 2.563;
      expect(spread(found!.quantiles), store).toBeCloseTo(Math.hypot(spread(quantiles), 0.15), 1);
      expect(found!.quantiles[9]! / quantiles[9]!, store).toBeCloseTo(1.2, 1);
    }
  });

  it("gives the same again for the same hire, and names a reading that lies outside it", () => {
    const readings = readOff(winter, ["lpg"], [FROM, TO]);
    expect(compare({ readings })).toEqual(compare({ readings }));
    expect(() => compare({ readings: [{ ...readings[0]!, at: "2026-12-01T10:00" }] })).toThrow(
      /readings\.0\.at/,
    );
    expect(() => compare({ added: [{ store: "fuel", amount: -1, at: FROM }] })).toThrow(/added\.0\.amount/);
  });
});
