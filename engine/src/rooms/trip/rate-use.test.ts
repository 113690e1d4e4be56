import { describe, expect, it } from "vitest";
import { forecastTrip } from "./forecast-trip.ts";
import { mayHighlands, newYearMountains } from "./try-trips.ts";
import type { TripInput } from "./types.ts";

const plain = (input: TripInput): TripInput => ({ ...input, runs: 1, spread: false, audit: true });
const auditOf = (input: TripInput, id: string) =>
  forecastTrip(plain(input)).result.stores.find(({ store }) => store === id)!.audit!;
/** all stores large enough that nothing runs out, so that use shows whole */
const roomy = (input: TripInput): TripInput => ({
  ...input,
  vehicle: {
    ...input.vehicle,
    systems: input.vehicle.systems.map((system) => {
      const more: Readonly<Record<string, object>> = {
        gas: { cylinders: 2, kgEach: 33 },
        water: { litres: 400 },
        waste: { litres: 300 },
        toilet: { litres: 40 },
        battery: { ratedAh: 1000 },
      };
      return { ...system, spec: { ...system.spec, ...more[system.id] } };
    }),
  },
});

describe("a trip forecast with measured rates", () => {
  const trip = roomy(newYearMountains());

  it("uses as much more of a store as its rate says, and of no other", () => {
    for (const store of ["lpg", "freshWater", "fuel", "def"] as const) {
      const use = (rates: TripInput["rates"]) => auditOf({ ...trip, rates }, store).out;
      expect(use({ [store]: { times: 1.3 } }) / use({}), store).toBeCloseTo(1.3, 2);
      expect(use({ cassette: { times: 1.3 } }), store).toBeCloseTo(use({}), 9);
    }
    for (const store of ["wasteWater", "cassette"] as const) {
      const put = (rates: TripInput["rates"]) => auditOf({ ...trip, rates }, store).in;
      expect(put({ [store]: { times: 0.8 } }) / put({}), store).toBeCloseTo(0.8, 2);
    }
  });

  it("uses of gas for heating by the heating's own rate, and for all else by the other", () => {
    const use = (rates: TripInput["rates"]) => auditOf({ ...trip, rates }, "lpg").out;
    const [all, rest] = [use({}), use({ lpg: { times: 1, warmth: 0.5 } })];
    const heating = 2 * (all - rest);
    expect(heating / all).toBeGreaterThan(0.4);
    expect(heating / all).toBeLessThan(0.99);
    expect(use({ lpg: { times: 1.5, warmth: 0.8 } })).toBeCloseTo(1.5 * (all - heating) + 0.8 * heating, 1);
    expect(use({ lpg: { times: 1.5, warmth: 1.5 } })).toBeCloseTo(use({ lpg: { times: 1.5 } }), 9);
    expect(() => use({ lpg: { times: 1, warmth: 3 } })).toThrow(/rates\.lpg\.warmth/);
  });

  it("draws on the battery as measured, less what heat and charging lose beside it", () => {
    const use = (rates: TripInput["rates"]) => auditOf({ ...trip, rates }, "battery12").out;
    const ratio = use({ battery12: { times: 1.5 } }) / use({});
    expect(ratio).toBeGreaterThan(1.3);
    expect(ratio).toBeLessThan(1.7);
  });

  it("spreads hires as far apart as was measured, around the same middle", () => {
    const gas = (rates: TripInput["rates"]) => {
      const { stores } = forecastTrip({ ...trip, runs: 400, rates }).result;
      const { band } = stores.find(({ store }) => store === "lpg")!;
      return [band.p90, band.p50, band.p10].map((levels) => band.p50[0]! - levels.at(-1)!);
    };
    const [plainLow, plainMiddle, plainHigh] = gas({});
    const [low, middle, high] = gas({ lpg: { times: 1, sd: 0.3 } });
    expect(middle! / plainMiddle!).toBeCloseTo(1, 1);
    const width = (from: number, to: number) => Math.log(to / from) / 2.563;
    const own = width(plainLow!, plainHigh!);
    expect(width(low!, high!)).toBeCloseTo(Math.hypot(own, 0.3), 1);
    expect(width(low!, high!)).toBeGreaterThan(own + 0.06);
  });

  it("brings hires as close together as was measured", () => {
    const spreadOf = (rates: TripInput["rates"]) => {
      const { stores } = forecastTrip({ ...trip, runs: 300, rates }).result;
      const { band } = stores.find(({ store }) => store === "def")!;
      return band.p90.at(-1)! - band.p10.at(-1)!;
    };
    expect(spreadOf({ def: { times: 1, width: 0.5 } }) / spreadOf({})).toBeCloseTo(0.5, 1);
  });

  it("still balances in every store", () => {
    const times = { battery12: 1.4, lpg: 0.7, freshWater: 1.8, wasteWater: 0.5, cassette: 2, fuel: 1.1 };
    const rates = Object.fromEntries(
      Object.entries(times).map(([store, factor]) => [store, { times: factor, sd: 0.3 }]),
    );
    for (const input of [mayHighlands(), newYearMountains()]) {
      const { stores } = forecastTrip({ ...input, runs: 20, audit: true, rates }).result;
      for (const { store, audit } of stores) expect(audit!.residual, store).toBeLessThan(1e-9);
    }
  });

  it("is the same to the last digit with no rate and with rates of 1", () => {
    const input = { ...mayHighlands(), runs: 20 };
    const none = forecastTrip(input);
    expect(forecastTrip({ ...input, rates: {} })).toEqual(none);
    expect(
      forecastTrip({
        ...input,
        rates: { lpg: { times: 1 }, battery12: { times: 1, sd: 0 }, fuel: { times: 1 } },
      }),
    ).toEqual(none);
  });

  it("says with the use per day which rate is in it", () => {
    const { stores } = forecastTrip(plain({ ...trip, rates: { lpg: { times: 1.25 } } })).result;
    const inputsOf = (id: string) => stores.find(({ store }) => store === id)!.usePerDay.inputs;
    expect(inputsOf("lpg").rateTimes).toBe(1.25);
    expect(inputsOf("fuel").rateTimes).toBeUndefined();
  });

  it("refuses a rate outside its bounds and names it", () => {
    expect(() => forecastTrip({ ...mayHighlands(), rates: { lpg: { times: 3 } } })).toThrow(
      /rates\.lpg\.times/,
    );
  });

  it("fills the tank on the way in time for a thirsty vehicle", () => {
    const input = mayHighlands();
    const stops = input.trip.stops.slice(0, 2).map((stop, k) => ({
      ...stop,
      drive: { distanceKm: k === 0 ? 120 : 370, minutes: 240 },
    }));
    const trip = { ...input.trip, stops };
    const { stores } = forecastTrip(plain({ ...input, trip, rates: { fuel: { times: 2 } } })).result;
    expect(stores.find(({ store }) => store === "fuel")!.trouble.chance).toBe(0);
  });
});
