import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { StoreId } from "../../stores/stores.ts";
import { forecastTrip } from "./forecast-trip.ts";
import { newYearMountains, panelVan, stopAt } from "./try-trips.ts";
import type { StoreForecast, TripForecast, TripInput } from "./types.ts";

// thousandths: doubles drawn by their bits are nearly all next to nought
const unit = fc.integer({ min: 0, max: 1000 }).map((n) => n / 1000);
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** What else may be fitted: a battery that drives, an inverter on either battery, a heated waste tank, an induction hob. */
const more = fc.record({
  drive: fc.option(
    fc.record({
      usableKwh: within(45, 110),
      kwhPer100Km: within(20, 45),
      postChargeA: fc.constantFrom(0, 10, 16),
      fastChargeKw: fc.constantFrom(50, 150),
      dcdcW: fc.constantFrom(0, 500),
      dcdcWhen: fc.constantFrom("driving", "always"),
    }),
  ),
  inverter: fc.option(
    fc.record({
      ratedW: within(300, 3500),
      source: fc.constantFrom("leisureBattery", "tractionBattery"),
      runs: fc.constantFrom("sockets", "hobAndSockets", "everything"),
    }),
  ),
  cab: fc.record({ starterAh: within(40, 120), starterStandingMa: within(0, 1000) }),
  waste: fc.record({ heated: fc.boolean(), heatedFrom: fc.constantFrom("battery", "mains") }),
  hob: fc.record({ energy: fc.constantFrom("gas", "electric") }),
});

/** Systems of the panel van with other sizes, some of them missing. */
const vehicle = fc
  .record({
    chemistry: fc.constantFrom("agm", "gel", "flooded", "lfp"),
    ratedAh: within(80, 300),
    cylinders: fc.integer({ min: 1, max: 2 }),
    kgEach: within(3, 11),
    peakW: within(20, 300),
    source: fc.constantFrom("gas", "gasElectric", "electric", "diesel", "dieselElectric"),
    fridge: fc.constantFrom("absorption", "compressor"),
    lossWK: within(35, 120),
    left: fc.array(fc.constantFrom("solar", "hook-up", "waste", "toilet", "hot-water", "charging"), {
      maxLength: 3,
    }),
    more,
  })
  .map(({ chemistry, ratedAh, cylinders, kgEach, peakW, source, fridge, lossWK, left, more }) => {
    const specs: Readonly<Record<string, Record<string, unknown>>> = {
      battery: { chemistry, ratedAh, usableShare: chemistry === "lfp" ? 0.9 : 0.5 },
      gas: { cylinders, kgEach },
      solar: { peakW },
      heater: { source },
      fridge: fridge === "compressor" ? { type: fridge, dcW: 45, gasGramsPerHour: 0 } : { type: fridge },
      waste: more.waste,
      hob: more.hob,
    };
    const added = [
      { id: "drive", kind: "tractionBattery", spec: more.drive },
      { id: "inverter", kind: "inverter", spec: more.inverter },
      { id: "cab", kind: "cab", spec: more.cab },
    ].flatMap(({ spec, ...system }) => (spec === null ? [] : [{ ...system, spec }]));
    const van = panelVan();
    return {
      ...van,
      body: { ...van.body, lossWK },
      systems: van.systems
        .filter(({ id }) => !left.some((out) => out === id))
        .map((system) => ({ ...system, spec: { ...system.spec, ...specs[system.id] } }))
        .concat(added),
    };
  });

const trip = fc
  .record({
    month: fc.integer({ min: 1, max: 12 }),
    serviced: fc.array(fc.boolean(), { minLength: 1, maxLength: 4 }),
    full: fc.record({
      battery12: unit,
      lpg: unit,
      freshWater: unit,
      wasteWater: unit,
      cassette: unit,
      fuel: within(0.7, 1),
      def: unit,
      tractionBattery: within(0.4, 1),
    }),
    dayC: within(12, 22),
  })
  .map(({ month, serviced, full, dayC }): TripInput["trip"] => {
    const two = (value: number) => String(value).padStart(2, "0");
    const day = (d: number) => `2026-${two(month)}-${two(d)}`;
    return {
      ...newYearMountains().trip,
      depart: `${day(3)}T13:00`,
      return: `${day(4 + serviced.length)}T15:00`,
      stops: serviced.map((post, k) => stopAt(`${day(3 + k)}T16:00`, `${day(4 + k)}T10:30`, post)),
      departWith: full,
      settings: { heater: { dayC } },
    };
  });

const input = fc
  .record({ vehicle, trip, seed: fc.nat(1e6) })
  .map((some): TripInput => ({ ...newYearMountains(), ...some, runs: 12, audit: true }));

function storeOf({ stores }: TripForecast, id: StoreId): StoreForecast {
  return stores.find(({ store }) => store === id)!;
}

/** The farthest that the middle levels of two forecasts of a store are apart, as a share of its capacity. */
function farthestApart(one: StoreForecast, other: StoreForecast): number {
  return Math.max(
    ...one.band.p50.map((level, k) => Math.abs(level - other.band.p50[k]!) / one.capacity.value),
  );
}

/** One life, nothing random. */
const plain = (some: TripInput): TripInput => ({ ...some, runs: 1, spread: false });
const never = "9999";

describe("the laws of the trip forecast, over random vehicles and trips", () => {
  it("what went in less what came out is the change of every store", () => {
    fc.assert(
      fc.property(input, (some) => {
        for (const { audit } of forecastTrip(some).result.stores) {
          expect(audit!.residual).toBeLessThan(1e-9);
          expect(Math.abs(audit!.in - audit!.out - audit!.change)).toBeLessThan(
            1e-9 * Math.max(1, audit!.in, audit!.out),
          );
        }
      }),
      { numRuns: 20, endOnFailure: true },
    );
  });

  it("no store is ever below empty or above full", () => {
    fc.assert(
      fc.property(input, (some) => {
        for (const { band, capacity } of forecastTrip(some).result.stores) {
          for (const level of [...band.p10, ...band.p90]) {
            expect(level).toBeGreaterThanOrEqual(0);
            expect(level).toBeLessThanOrEqual(capacity.value + 5e-4);
          }
        }
      }),
      { numRuns: 20, endOnFailure: true },
    );
  });

  it("the same input gives the same answer", () => {
    fc.assert(
      fc.property(input, (some) => {
        expect(forecastTrip(some)).toEqual(forecastTrip(some));
      }),
      { numRuns: 5 },
    );
  });

  // two thousand lives: of a few the middle may be one that stands alone, between those that ran out and the others
  it("halving the step moves the middle level by at most 1 % of the capacity", () => {
    fc.assert(
      fc.property(input, (some) => {
        const lives = { ...some, runs: 2001 };
        const whole = forecastTrip({ ...lives, stepMinutes: 15 }).result;
        const half = forecastTrip({ ...lives, stepMinutes: 7.5 }).result;
        for (const store of whole.stores)
          expect(farthestApart(store, storeOf(half, store.store))).toBeLessThanOrEqual(0.01);
      }),
      { numRuns: 20, endOnFailure: true },
    );
  }, 240_000);

  const larger: readonly [string, StoreId, string, string, number][] = [
    ["a larger battery", "battery12", "battery", "ratedAh", 1.3],
    ["more gas", "lpg", "gas", "kgEach", 1.4],
    ["a larger panel", "battery12", "solar", "peakW", 1.5],
    ["a larger water tank", "freshWater", "water", "litres", 1.3],
    ["a larger cassette", "cassette", "toilet", "litres", 1.3],
    ["a larger starter battery", "starterBattery", "cab", "starterAh", 1.3],
    ["a larger traction battery", "tractionBattery", "drive", "usableKwh", 1.3],
  ];
  it.each(larger)("%s never brings the trouble of its store forward", (_, store, id, field, times) => {
    fc.assert(
      fc.property(input, (some) => {
        const fitted = some.vehicle.systems.find((system) => system.id === id);
        fc.pre(fitted !== undefined);
        const before = fitted!.spec[field] ?? 17;
        // without charge points, so that it runs down at all
        if (id === "drive") Object.assign(fitted!.spec, { fastChargeKw: 0 });
        const systems = some.vehicle.systems.map((system) =>
          system.id === id
            ? { ...system, spec: { ...system.spec, [field]: Number(before) * times } }
            : system,
        );
        const small = storeOf(forecastTrip(plain(some)).result, store).trouble.p50At ?? never;
        const large = storeOf(
          forecastTrip(plain({ ...some, vehicle: { ...some.vehicle, systems } })).result,
          store,
        );
        expect((large.trouble.p50At ?? never) >= small).toBe(true);
      }),
      { numRuns: 20, endOnFailure: true },
    );
  });
});
