import { describe, expect, it } from "vitest";
import { indexOf } from "../../stores/ensemble.ts";
import { forecastTrip } from "./forecast-trip.ts";
import { liveTrip } from "./live-trip.ts";
import { planTrip } from "./plan-trip.ts";
import { mayHighlands, newYearMountains, panelVan } from "./try-trips.ts";
import type { TripInput } from "./types.ts";

type Specs = Readonly<Record<string, Record<string, unknown>>>;
const FULL_L = 95;

/** New Year in the hills in a draughty van with a battery that lasts, as it is set; one life, nothing random. */
function winter(settings: TripInput["trip"]["settings"], specs: Specs = {}): TripInput {
  const van = panelVan();
  const own: Specs = {
    battery: { chemistry: "lfp", ratedAh: 600 },
    "hot-water": { frostValveC: 4 },
    ...specs,
  };
  const systems = van.systems.map((system) => ({ ...system, spec: { ...system.spec, ...own[system.id] } }));
  const { trip, ...input } = newYearMountains();
  const vehicle = { ...van, systems, body: { ...van.body, lossWK: 120 } };
  return { ...input, vehicle, trip: { ...trip, settings }, runs: 1, spread: false };
}
const waterOf = (input: TripInput) =>
  forecastTrip(input).result.stores.find(({ store }) => store === "freshWater")!;
const drained = (input: TripInput) =>
  waterOf(input).draws.find(({ kind }) => kind === "hotWater")?.amount.value ?? 0;

/** Heat of the hot water at every step, Wh. */
function heats(input: TripInput): number[] {
  const plan = planTrip(input);
  const options = { runs: 1, people: 2, seed: 1, spread: false, restarts: [] };
  const seen: number[] = [];
  const before = (_step: number, { ensemble }: Parameters<Parameters<typeof liveTrip>[5]["before"]>[1]) => {
    seen.push(ensemble.level[indexOf("hotWaterHeat")]![0]!);
  };
  const recorder = { before, after: () => undefined };
  liveTrip(input.vehicle, plan.systems, plan.input.trip, plan.timeline, options, recorder);
  return seen;
}
const off = { heater: { on: false } };
/** cold by night only: the heater is off then and on again in the morning */
const coldNights = { heater: { dayC: 19, nightC: -5 } };

describe("the frost valve", () => {
  it("opens in a cold van with the heating off, and with the pump left on the tank goes too", () => {
    const input = winter(off);
    expect(drained(input)).toBeGreaterThan(0.6 * FULL_L);
    expect(Math.min(...waterOf(input).band.p50)).toBeLessThan(1);
    expect(Math.min(...heats(input).slice(8))).toBe(0);
  });

  it("lets out more or less of the tank within two kelvins of the temperature of its valve, not all or nothing", () => {
    const tight = (specs: Specs = {}) => {
      const some = winter(off, specs);
      return { ...some, vehicle: { ...some.vehicle, body: { ...some.vehicle.body, lossWK: 45 } } };
    };
    const { cabinC, axis } = forecastTrip(tight()).result;
    const found = axis.at.indexOf("2026-12-30T08:00");
    const coldestC = Math.min(...cabinC.p50.slice(0, found));
    // the morning after, with the valve at so many kelvin above the coldest of the night
    const left = (aboveK: number) =>
      waterOf(tight({ "hot-water": { frostValveC: coldestC + aboveK } })).band.p50[found]!;
    const all = left(-2.5);
    expect(left(-2.2)).toBeCloseTo(all, 6);
    expect(left(0) / all).toBeGreaterThan(0.35);
    expect(left(0) / all).toBeLessThan(0.65);
    expect(left(2.2)).toBeLessThan(0.05 * all);
    for (let k = -2; k < 2; k += 0.2) expect(left(k) - left(k + 0.2)).toBeLessThan(0.1 * all);
  });

  it("leaves the tank alone where the pump is off at night and by day the van is warm", () => {
    const warm = winter({ ...coldNights, "hot-water": { pumpOffAtNight: true } }, { heater: { gasKw: 6 } });
    expect(Math.min(...heats(warm))).toBe(0);
    // only what fills the heater again in the mornings
    expect(drained(warm)).toBeGreaterThan(0);
    expect(drained(warm)).toBeLessThanOrEqual(4 * 10 + 1e-6);
  });

  it("leaves the tank alone where the battery is at its cut-off: the pump stands still", () => {
    const dead = winter(off, { battery: { chemistry: "agm", ratedAh: 20 } });
    const empty = { ...dead, trip: { ...dead.trip, departWith: { battery12: 0 }, stops: [] } };
    expect(drained({ ...empty, trip: { ...empty.trip, returnDrive: { distanceKm: 0, minutes: 0 } } })).toBe(
      0,
    );
  });

  it("is shut and the heater filled again once the van is warm, and hot water is made anew", () => {
    const heat = heats(
      winter({ ...coldNights, "hot-water": { pumpOffAtNight: true } }, { heater: { gasKw: 6 } }),
    );
    const emptied = heat.findIndex((wh, step) => step > 8 && wh === 0);
    expect(emptied).toBeGreaterThan(0);
    // 50 °C in ten litres
    expect(Math.max(...heat.slice(emptied))).toBeGreaterThan(400);
  });

  it("opens nowhere in May, nor in winter with the heating on, nor where none is fitted", () => {
    expect(drained({ ...mayHighlands(), runs: 1, spread: false })).toBe(0);
    expect(drained(winter({}, { gas: { kgEach: 30 } }))).toBe(0);
    expect(drained(winter(off, { "hot-water": { frostValveC: 0 } }))).toBe(0);
  });

  it("burns no gas under an empty heater", () => {
    const gas = (input: TripInput) =>
      forecastTrip(input)
        .result.stores.find(({ store }) => store === "lpg")!
        .draws.find(({ kind }) => kind === "hotWater")?.amount.value ?? 0;
    expect(gas(winter(off))).toBeLessThan(0.5 * gas(winter(off, { "hot-water": { frostValveC: 0 } })));
  });
});
