import { describe, expect, it } from "vitest";
import { indexOf } from "../../stores/ensemble.ts";
import type { StoreId } from "../../stores/stores.ts";
import { capacityFactor, peukertFactor } from "../../systems/leisure-battery/physics.ts";
import { FLOW_STOPS_C } from "../../systems/lpg/physics.ts";
import { parseSpec } from "../../systems/registry.ts";
import { liveTrip } from "./live-trip.ts";
import { planTrip } from "./plan-trip.ts";
import { newYearMountains, panelVan, stopAt } from "./try-trips.ts";
import type { TripInput } from "./types.ts";

type System = TripInput["vehicle"]["systems"][number];
interface Step {
  readonly level: number;
  readonly cabinC: number;
  readonly outsideC: number;
}

/** Four days of the new year on one pitch, with nothing fitted but what is given; one life, nothing random. */
function input(systems: readonly System[], postAmperes = 0, change: Partial<TripInput["trip"]> = {}) {
  const { trip, ...rest } = newYearMountains();
  const stop = stopAt("2026-12-29T12:30", "2027-01-02T11:00", postAmperes > 0);
  const stops = [{ ...stop, drive: { distanceKm: 0, minutes: 0 }, pitch: { ...stop.pitch, postAmperes } }];
  const vehicle = { ...panelVan(), systems: [...systems] };
  return {
    ...rest,
    runs: 1,
    spread: false,
    vehicle,
    trip: { ...trip, stops, ...change },
  } satisfies TripInput;
}

/** What a store held, and how warm it was, at the beginning of each step; and what each kind drew of each store. */
function live(some: TripInput, store: StoreId) {
  const plan = planTrip(some);
  const { vehicle, trip, seed } = plan.input;
  const steps: Step[] = [];
  const recorder = {
    before: () => undefined,
    after: (_: number, { ensemble, cabinC, outsideC }: Parameters<AfterStep>[1]) => {
      steps.push({
        level: ensemble.level[indexOf(store)]![0]!,
        cabinC: cabinC[0]!,
        outsideC: outsideC[0]!,
      });
    },
  };
  const options = { runs: 1, people: plan.people, seed, spread: false, restarts: [] };
  const { totals } = liveTrip(vehicle, plan.systems, trip, plan.timeline, options, recorder);
  const drawn = (kind: string) => totals.find((one) => one.kind === kind)!.drawn[indexOf(store)]!;
  return { steps, timeline: plan.timeline, drawn };
}
type AfterStep = Parameters<typeof liveTrip>[5]["after"];

const system = (kind: string, spec: Record<string, unknown> = {}): System => ({ id: kind, kind, spec });
const charger = [system("hookUp"), system("charging", { mainsChargerA: 100, drivingCharge: "none" })];

describe("a battery on charge", () => {
  it("of lead takes its bulk current first, and then what is missing closes by the same share in each step", () => {
    const battery = system("leisureBattery", { chemistry: "agm", ratedAh: 100 });
    const { steps } = live(input([battery, ...charger], 16, { departWith: { battery12: 0 } }), "battery12");
    const first = steps.findIndex(({ level }) => level > 0);
    // a quarter of 100 Ah at 14 V, 85 % of it stored
    expect(steps[first]!.level).toBeCloseTo(0.25 * 100 * 14 * 0.85 * 0.25, 6);
    const gaps = steps.slice(first + 5, first + 12).map(({ level }) => 600 - level);
    // the taper begins where 20 % of the rated 1200 Wh are missing
    const share = Math.exp((-0.25 * 100 * 14 * 0.85 * 0.25) / (0.2 * 1200));
    for (const [k, gap] of gaps.slice(1).entries()) expect(gap / gaps[k]!).toBeCloseTo(share, 9);
    expect(600 - steps[first + 3]!.level).toBeGreaterThan(gaps[0]!);
  });

  it("of lithium takes none while it is below 0 °C, and some as soon as it is warmer", () => {
    const battery = system("leisureBattery", { chemistry: "lfp", ratedAh: 100, usableShare: 0.9 });
    const some = input([battery, ...charger], 16, { departWith: { battery12: 0 } });
    const pass = { name: "Pass", country: "AT", latitudeDeg: 47, longitudeDeg: 11, elevationM: 2200 };
    const [stop] = some.trip.stops;
    const body = { ...some.vehicle.body, lossWK: 400 };
    const cold = {
      ...some,
      vehicle: { ...some.vehicle, body },
      trip: { ...some.trip, depot: pass, stops: [{ ...stop!, place: pass }] },
    };
    const { steps } = live(cold, "battery12");
    const frozen = steps.slice(0, -1).filter(({ cabinC }, k) => k > 8 && cabinC < 0);
    expect(frozen.length).toBeGreaterThan(100);
    for (const [k, { cabinC, level }] of steps.slice(0, -1).entries())
      if (cabinC < 0) expect(steps[k + 1]!.level).toBeLessThanOrEqual(level);
    const warm = live(some, "battery12").steps;
    expect(warm.at(-20)!.level).toBeCloseTo(0.9 * 1200, 0);
  });
});

describe("a battery that is drawn on", () => {
  it("falls by the hour-rated Peukert form and by the cold, until its cut-off", () => {
    const spec = { chemistry: "agm", ratedAh: 40, peukert: 1.3 } as const;
    // 60 W without a break by day are 5 A, two and a half times the rate of 20 hours
    const idle = system("inverter", { ratedW: 300, idleW: 60, runs: "sockets" });
    const { steps, timeline } = live(input([system("leisureBattery", spec), idle]), "battery12");
    const battery = parseSpec("leisureBattery", spec);
    const begun = steps.findIndex((_, k) => timeline.clockH[k]! >= 13);
    for (const k of [begun, begun + 1, begun + 2]) {
      const cold = capacityFactor("agm", steps[k]!.cabinC);
      const lost = 15 * (peukertFactor(battery, 5) / cold);
      expect(steps[k]!.level - steps[k + 1]!.level).toBeCloseTo(lost, 6);
    }
    expect(peukertFactor(battery, 5)).toBeCloseTo(2.5 ** 0.3, 9);
    expect(Math.min(...steps.map(({ level }) => level))).toBeGreaterThanOrEqual(0);
  });
});

describe("gas in the cold", () => {
  const lpg = { arrangement: "exchange", cylinders: 1, kgEach: 11, tareKgEach: 8, hoseDate: "2024-03-01" };
  const fitted = (fuel: string) => [
    system("lpg", { ...lpg, fuel }),
    system("heating", { source: "gas" }),
    system("leisureBattery", { chemistry: "lfp", ratedAh: 600 }),
  ];

  it("of butane gives none while it is colder than its pressure allows, of propane it burns on", () => {
    const { steps } = live(input(fitted("butane")), "lpg");
    const propane = live(input(fitted("propane")), "lpg").steps;
    let stood = 0;
    for (let k = 0; k + 1 < steps.length; k++) {
      // what a step gives goes by the air in it, which is known one step later
      if (steps[k + 1]!.outsideC > FLOW_STOPS_C.butane) continue;
      expect(steps[k + 1]!.level).toBe(steps[k]!.level);
      stood += propane[k + 1]!.level < propane[k]!.level ? 1 : 0;
    }
    expect(stood).toBeGreaterThan(20);
  });
});

describe("water and the road", () => {
  it("the toilet takes its flush from the tank, or from its own", () => {
    const flushed = (flushFrom: string) =>
      live(
        input([
          system("freshWater", { litres: 95 }),
          system("cassetteToilet", { flushFrom, spareCassettes: 2 }),
        ]),
        "freshWater",
      ).drawn("cassetteToilet");
    // 5 flushes of 0.4 L a head and day, four fifths of them here, from the first afternoon to the last morning
    const perDay = 2 * 5 * 0.4 * 0.8;
    expect(flushed("fresh")).toBeGreaterThan(3.3 * perDay);
    expect(flushed("fresh")).toBeLessThan(4.4 * perDay);
    expect(flushed("own")).toBe(0);
  });

  it("fuel goes by the kilometre", () => {
    const { drawn } = live(input([system("fuel")]), "fuel");
    expect(drawn("fuel")).toBeCloseTo((210 * 10.5) / 100, 6);
  });
});
