import { describe, expect, it } from "vitest";
import { parseSpec } from "../../systems/registry.ts";
import { coldFactor } from "../../systems/traction-battery/physics.ts";
import { rangeKm } from "../../systems/traction-battery/spec.ts";
import { heaterDuty } from "../../systems/waste-water/physics.ts";
import { forecastTrip } from "./forecast-trip.ts";
import { newYearMountains, panelVan, stopAt } from "./try-trips.ts";
import type { TripInput } from "./types.ts";

type Specs = Readonly<Record<string, Record<string, unknown>>>;

/** The panel van with a large lithium battery, an electric hob and what else is given; one life, nothing random. */
function live(
  change: Specs,
  more: TripInput["vehicle"]["systems"] = [],
  trip: Partial<TripInput["trip"]> = {},
) {
  const van = panelVan();
  const specs: Specs = {
    battery: { chemistry: "lfp", ratedAh: 900, usableShare: 0.9 },
    hob: { energy: "electric" },
    ...change,
  };
  const systems = van.systems
    .filter(({ id }) => id !== "solar")
    .map((system) => ({ ...system, spec: { ...system.spec, ...specs[system.id] } }))
    .concat(more);
  const input = newYearMountains();
  const { result, findings } = forecastTrip({
    ...input,
    vehicle: { ...van, systems },
    trip: { ...input.trip, ...trip },
    runs: 1,
    spread: false,
  });
  const drawn = (store: string, kind: string) =>
    result.stores.find((each) => each.store === store)?.draws.find((each) => each.kind === kind)?.amount
      .value ?? 0;
  return { result, findings, drawn };
}
const inverter = (spec: Record<string, unknown> = {}) => [
  { id: "inverter", kind: "inverter", spec: { ratedW: 3000, idleW: 0, runs: "hobAndSockets", ...spec } },
];
const onPost = { stops: [stopAt("2026-12-29T12:30", "2027-01-02T11:00", true)] };

describe("the inverter", () => {
  it("draws what the hob takes and what it loses itself, and no more", () => {
    // four evenings and four mornings: 0.85 h a day at 1.8 kW, seven tenths, and 0.4 against 0.85 into the pot
    const perDay = 0.85 * 1800 * 0.7 * (0.4 / 0.85);
    const { drawn } = live({}, inverter({ efficiency: 0.8 }));
    expect(drawn("battery12", "inverter")).toBeCloseTo((perDay * 4) / 0.8, 0);
  });

  it("draws nothing on a post, nor where it feeds sockets only and nothing is plugged in", () => {
    expect(live({}, inverter(), onPost).drawn("battery12", "inverter")).toBe(0);
    expect(live({}, inverter({ runs: "sockets" })).drawn("battery12", "inverter")).toBe(0);
  });

  it("makes no room for more charge than its battery takes", () => {
    const battery = { chemistry: "gel", ratedAh: 90, usableShare: 0.5 };
    const drive = { id: "drive", kind: "tractionBattery", spec: { usableKwh: 75, dcdcWhen: "always" } };
    const levels = (more: TripInput["vehicle"]["systems"]) =>
      live({ battery, hob: { energy: "gas" } }, [drive, ...more], {
        departWith: { battery12: 0.3 },
      }).result.stores.find(({ store }) => store === "battery12")!.band.p50;
    const [plain, fitted] = [levels([]), levels(inverter())];
    for (const [hour, level] of plain.entries()) expect(fitted[hour]!).toBeCloseTo(level, 6);
  });

  it("never heats from the battery of the living part", () => {
    const all = live({}, inverter({ runs: "everything" }));
    const hob = live({}, inverter());
    expect(all.drawn("battery12", "inverter")).toBeCloseTo(hob.drawn("battery12", "inverter"), 6);
  });

  it("stops at a fifth of its battery, so that lights and pump go on", () => {
    const { result } = live({ battery: { chemistry: "lfp", ratedAh: 100, usableShare: 0.9 } }, inverter());
    const unhindered = live({ battery: { chemistry: "lfp", ratedAh: 100, usableShare: 0.9 } });
    const first = (answer: typeof result) =>
      answer.stores.find(({ store }) => store === "battery12")!.trouble.p50At ?? "9999";
    expect(first(result) <= first(unhindered.result)).toBe(true);
    expect(result.stores.find(({ store }) => store === "battery12")!.band.p50[12]).toBeGreaterThan(0);
  });
});

describe("an electric hob", () => {
  const cold = (answer: ReturnType<typeof live>) =>
    answer.findings.find(({ code }) => code === "trip.withoutMeals");

  it("ends at the same level at its cut-out whatever the step", () => {
    const battery = { chemistry: "agm", ratedAh: 120, usableShare: 0.5 };
    const levels = [15, 7.5].map((stepMinutes) => {
      const input = newYearMountains();
      const van = panelVan();
      const specs: Specs = { battery, hob: { energy: "electric" } };
      const systems = van.systems
        .map((system) => ({ ...system, spec: { ...system.spec, ...specs[system.id] } }))
        .concat(inverter());
      const { result } = forecastTrip({
        ...input,
        vehicle: { ...van, systems },
        runs: 1,
        spread: false,
        stepMinutes: stepMinutes as 15 | 7.5,
      });
      return result.stores.find(({ store }) => store === "battery12")!.band.p50;
    });
    const capacity = 120 * 12 * 0.5;
    const apart = levels[0]!.map((level, k) => Math.abs(level - levels[1]![k]!) / capacity);
    expect(Math.max(...apart)).toBeLessThan(0.01);
    // and it does cut out
    expect(Math.min(...levels[0]!)).toBeLessThan(0.2 * capacity);
  });

  it("cooks nothing without a post or an inverter, and the forecast says so", () => {
    expect(cold(live({}))).toMatchObject({
      gate: "resources",
      severity: "condition",
      about: "hob",
      facts: { stops: 1, stop: "Car park under the hills", share: { value: 100 } },
    });
  });

  it("cooks on a post, on an inverter that is large enough, and on gas anyway", () => {
    expect(cold(live({}, [], onPost))).toBeUndefined();
    expect(cold(live({}, inverter()))).toBeUndefined();
    expect(cold(live({ hob: { energy: "gas" } }))).toBeUndefined();
  });
});

describe("the heated waste tank", () => {
  it("draws in frost by how cold it is, and not in the warm", () => {
    expect([heaterDuty(10), heaterDuty(5), heaterDuty(-7.5), heaterDuty(-30)]).toEqual([0, 0, 0.5, 1]);
    expect(live({ waste: { heated: true } }).drawn("battery12", "wasteWater")).toBeGreaterThan(0);
    expect(live({ waste: { heated: false } }).drawn("battery12", "wasteWater")).toBe(0);
  });

  it("draws on no battery where it is heated from the mains", () => {
    expect(live({ waste: { heated: true, heatedFrom: "mains" } }).drawn("battery12", "wasteWater")).toBe(0);
  });
});

describe("the diesel heater with an electric stage", () => {
  const heater = { source: "dieselElectric", gasKw: 4, electricW: 1800 };
  it("burns off the post, and on a post only what the electric stage lacks", () => {
    const off = live({ heater }).drawn("fuel", "heating");
    expect(off).toBeGreaterThan(1);
    expect(live({ heater }, [], onPost).drawn("fuel", "heating")).toBeLessThan(off / 2);
  });

  it("stops at a quarter of the tank, so that one can still drive", () => {
    const trip = { departWith: { fuel: 0.25 }, returnDrive: { distanceKm: 0, minutes: 0 } };
    const stops = [
      { ...stopAt("2026-12-29T16:00", "2027-01-02T11:00", false), drive: { distanceKm: 0, minutes: 0 } },
    ];
    expect(live({ heater }, [], { ...trip, stops }).drawn("fuel", "heating")).toBeLessThan(1e-9);
  });
});

describe("the battery that drives", () => {
  const spec = { usableKwh: 75, kwhPer100Km: 32, reserveShare: 0.15 };
  const drive = (more: Record<string, unknown> = {}) => [
    { id: "drive", kind: "tractionBattery", spec: { ...spec, dcdcW: 0, ...more } },
  ];

  it("goes 199 km on 75 kWh at 32 kWh/100 km with 15 % kept, and less in the cold", () => {
    expect(rangeKm(parseSpec("tractionBattery", spec))).toBeCloseTo((75 * 0.85 * 100) / 32, 9);
    expect([coldFactor(25), coldFactor(20), coldFactor(10)]).toEqual([1, 1, 1.09]);
    expect(coldFactor(-40)).toBe(1.35);
  });

  it("uses by the road what the distance takes, in this cold", () => {
    const used = live({}, drive()).drawn("tractionBattery", "tractionBattery");
    const plain = (120 + 210) * 320;
    expect(used).toBeGreaterThan(plain);
    expect(used).toBeLessThan(plain * 1.35);
  });

  it("is charged on the way before it falls below three tenths, unless the hirer is told not to", () => {
    const least = (settings: TripInput["trip"]["settings"]) =>
      Math.min(
        ...live({}, drive(), { settings }).result.stores.find(({ store }) => store === "tractionBattery")!
          .band.p50,
      );
    expect(least({})).toBeGreaterThanOrEqual(0.3 * 75_000 - 1);
    expect(least({ drive: { chargeOnTheWay: false } })).toBe(0);
  });

  it("fills at a post with the current that fits beside the others, and waits while the heater has the post", () => {
    const most = (settings: TripInput["trip"]["settings"]) => {
      const { result } = live({}, drive(), { ...onPost, settings });
      const { band } = result.stores.find(({ store }) => store === "tractionBattery")!;
      return Math.max(...band.p50.slice(24)) / 75_000;
    };
    // 2300 W less charger and fridge leave 8 A with the heater on gas, and nothing beside 1.8 kW of heating
    const onGas = { heater: { source: "gas" }, "hot-water": { source: "gas" } };
    expect(most(onGas)).toBeCloseTo(1, 6);
    expect(most({})).toBeLessThan(0.5);
  });
});
