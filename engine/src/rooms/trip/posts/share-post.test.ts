import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { indexOf } from "../../../stores/ensemble.ts";
import { forecastTrip } from "../forecast-trip.ts";
import { type Lived, type LiveState, liveTrip } from "../live-trip.ts";
import { planTrip } from "../plan-trip.ts";
import { newYearMountains, panelVan, stopAt } from "../try-trips.ts";
import type { TripInput } from "../types.ts";

type Specs = Readonly<Record<string, Record<string, unknown>>>;
const MAINS = indexOf("mains230");

/** The panel van, so leaky that its heater is always short of heat, at four posts in the new year; one life, nothing random. */
function input(specs: Specs, amperes: readonly number[], settings: TripInput["trip"]["settings"] = {}) {
  const van = panelVan();
  const { trip, ...rest } = newYearMountains();
  const stops = amperes.map((postAmperes, k) => {
    const stop = stopAt(`2026-12-${26 + k}T14:00`, `2026-12-${27 + k}T12:00`, true);
    return { ...stop, pitch: { ...stop.pitch, postAmperes } };
  });
  const systems = van.systems
    .filter(({ id }) => id !== "solar")
    .map((system) => ({ ...system, spec: { ...system.spec, ...specs[system.id] } }));
  return {
    ...rest,
    runs: 1,
    spread: false,
    vehicle: { ...van, systems, body: { ...van.body, lossWK: 300 } },
    trip: {
      ...trip,
      depart: "2026-12-26T11:00",
      return: `2026-12-${26 + amperes.length}T18:00`,
      stops,
      settings: { heater: { dayC: 22, nightC: 22 }, ...settings },
    },
  } satisfies TripInput;
}

/** Lives it and asks at the beginning of every step. */
function live(some: TripInput, ask: (live: LiveState, step: number) => void): Lived & { dtH: number } {
  const plan = planTrip(some);
  const { vehicle, trip, seed } = plan.input;
  const options = { runs: 1, people: plan.people, seed, spread: false, restarts: [] };
  const recorder = { before: (step: number, state: LiveState) => ask(state, step), after: () => undefined };
  return {
    ...liveTrip(vehicle, plan.systems, trip, plan.timeline, options, recorder),
    dtH: plan.timeline.dtH,
  };
}

/** W that heating took from the post at each stop, in the mean of the stay. */
function heatingW(some: TripInput): number[] {
  const { timeline } = planTrip(some);
  const drawn: number[] = [];
  live(some, ({ warmthDrawn }) => drawn.push(warmthDrawn(MAINS)));
  return timeline.stops.map(
    ({ arrive, leave }) => (drawn[leave]! - drawn[arrive]!) / ((leave - arrive) * timeline.dtH),
  );
}

const cardW = (some: TripInput, kind: string) =>
  forecastTrip(some).result.posts!.map(
    ({ kept }) => kept.find((one) => one.kind === kind)?.stage.value ?? null,
  );
const apart = { heater: { withHotWater: false }, "hot-water": { source: "gas" } };

describe("what a post leaves to each system in the forecast", () => {
  it("is for the heater the stage that the card tells, stop by stop", () => {
    for (const electricW of [1000, 1800, 2000, 3000]) {
      const some = input({ ...apart, heater: { ...apart.heater, electricW } }, [4, 6, 10, 16]);
      const [card, lived] = [cardW(some, "heating"), heatingW(some)];
      for (const [stop, watts] of lived.entries()) expect(watts).toBeCloseTo(card[stop]!, 6);
      expect(card.every((watts) => [0, electricW / 2, electricW].includes(watts!))).toBe(true);
    }
  });

  it("is half of 2 kW on 10 A beside charger and fridge, and all of it with the fridge on gas", () => {
    const specs = { ...apart, heater: { ...apart.heater, electricW: 2000 } };
    expect(heatingW(input(specs, [10]))[0]).toBeCloseTo(1000, 6);
    expect(heatingW(input(specs, [10], { fridge: { source: "gas" } }))[0]).toBeCloseTo(2000, 6);
  });

  it("goes by how the others are set at that stop", () => {
    const specs = { ...apart, heater: { ...apart.heater, electricW: 2000 } };
    const some = input(specs, [10, 10]);
    const [first, second] = some.trip.stops;
    const stops = [first!, { ...second!, settings: { fridge: { source: "gas" } } }];
    const lived = heatingW({ ...some, trip: { ...some.trip, stops } });
    expect(lived[0]).toBeCloseTo(1000, 6);
    expect(lived[1]).toBeCloseTo(2000, 6);
  });

  it("keeps to a lower stage that the hirer is told, and takes no power between stages", () => {
    const at = (electricW: number) =>
      heatingW(input(apart, [16], { heater: { dayC: 22, nightC: 22, electricW } }))[0];
    expect(at(900)).toBeCloseTo(900, 6);
    expect(at(1500)).toBeCloseTo(900, 6);
    expect(at(500)).toBe(0);
  });

  it("is nothing for a charger, a fridge or a water heater that the card has off", () => {
    const settings = { heater: { dayC: 22, nightC: 22 } };
    const cold = { heater: { withHotWater: false } };
    const large = input({ ...cold, charging: { mainsChargerA: 100 } }, [4], settings);
    expect(cardW(large, "charging")).toEqual([0]);
    expect(cardW(large, "fridge")).toEqual([135]);
    // 1380 W less charger, fridge and 900 W of warmth leave no room for another 900 W
    const small = input(cold, [6], settings);
    expect(cardW(small, "hotWater")).toEqual([0]);
    const drawn = (some: TripInput, kind: string) =>
      live(some, () => undefined).totals.find((one) => one.kind === kind)!.drawn[MAINS]!;
    expect(drawn(large, "charging")).toBe(0);
    expect(drawn(large, "fridge")).toBeGreaterThan(0);
    expect(drawn(small, "hotWater")).toBe(0);
    expect(drawn(input(cold, [16], settings), "hotWater")).toBeGreaterThan(0);
  });

  it("lets cooking on a plate go before the heater, which then has the rest of that time", () => {
    const some = input({ ...apart, hob: { energy: "electric" } }, [10, 10, 10], {
      hob: { burnerHoursPerDay: 4 },
      heater: { dayC: 22, nightC: 22 },
    });
    expect(cardW(some, "heating")).toEqual([1800, 1800, 1800]);
    const codes = forecastTrip(some).findings.map(({ code }) => code);
    expect(codes).not.toContain("trip.withoutMeals");
    expect(heatingW(some)[1]).toBeLessThan(1795);
  });

  it("is never more than the card's stage, whatever is fitted and set", () => {
    const pick = <T>(...values: T[]) => fc.constantFrom(...values);
    const random = fc.record({
      amperes: pick(4, 6, 10, 13, 16),
      electricW: pick(800, 1000, 1800, 2000, 3000),
      withHotWater: fc.boolean(),
      mainsChargerA: pick(0, 18, 30, 60),
      fridge: pick("auto", "gas"),
      told: pick(500, 900, 1000, 5000),
    });
    fc.assert(
      fc.property(random, ({ amperes, electricW, withHotWater, mainsChargerA, fridge, told }) => {
        const some = input({ heater: { electricW, withHotWater }, charging: { mainsChargerA } }, [amperes], {
          fridge: { source: fridge },
          heater: { dayC: 22, nightC: 22, electricW: told },
        });
        const { totals } = live(some, () => undefined);
        for (const { kind, drawn } of totals) {
          const card = cardW(some, kind)[0];
          if (card === null || kind === "body") continue;
          expect(drawn[MAINS]!).toBeLessThanOrEqual(card! * 22 + 1e-6);
        }
      }),
      { numRuns: 25 },
    );
  });
});

describe("heating and hot water in one appliance", () => {
  /** W that heater and hot water take from the post together in each step: nothing else is on it. */
  function bothW(withHotWater: boolean, amperes = 16): number[] {
    const specs = {
      heater: { withHotWater },
      charging: { mainsChargerA: 0 },
      hob: { energy: "gas" },
      "hot-water": { litres: 40 },
    };
    const sums: number[] = [];
    const some = input(specs, [amperes], { fridge: { source: "gas" }, heater: { dayC: 22, nightC: 22 } });
    const { dtH } = live(some, ({ ensemble }) => sums.push(ensemble.outOf[MAINS]![0]!));
    return sums.slice(1).map((sum, step) => (sum - sums[step]!) / dtH);
  }

  it("draw no more than the one set of elements, and two appliances draw both", () => {
    expect(Math.max(...bothW(true))).toBeCloseTo(1800, 6);
    expect(Math.max(...bothW(false))).toBeCloseTo(2700, 6);
    expect(Math.max(...bothW(true, 6))).toBeCloseTo(900, 6);
  });

  it("heat the water first, and burn gas for the warmth that is then short", () => {
    const gasKg = (withHotWater: boolean, kind: string) => {
      const { totals } = live(
        input({ gas: { kgEach: 60 }, heater: { withHotWater } }, [16, 16, 16]),
        () => undefined,
      );
      return totals.find((one) => one.kind === kind)!.drawn[indexOf("lpg")]!;
    };
    // half of the element's 1.8 kW goes to the water: as much gas as when it has an element of its own
    expect(gasKg(true, "hotWater")).toBeCloseTo(gasKg(false, "hotWater"), 2);
    expect(gasKg(true, "heating")).toBeGreaterThan(gasKg(false, "heating"));
  });

  it("leave the whole stage to warmth while no water is heated", () => {
    const night = bothW(true).slice(60, 70);
    for (const watts of night) expect(watts).toBeCloseTo(1800, 6);
  });
});
