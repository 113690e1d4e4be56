import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Finding } from "../base/finding.ts";
import type { VehicleDescription } from "../vehicle/description.ts";
import { parseVehicle } from "../vehicle/parse.ts";
import { listMissingRules } from "./glass/list-missing-rules.ts";
import { checkLoad } from "./loading/check-load.ts";
import type { LoadInput } from "./loading/types.ts";
import { checkCountries } from "./rules/check-countries.ts";
import { checkLicence } from "./rules/check-licence.ts";
import { checkSeason } from "./rules/check-season.ts";
import { checkSeats } from "./rules/check-seats.ts";
import type { Driver } from "./situation.ts";
import { forecastTrip } from "./trip/forecast-trip.ts";
import { mayHighlands, newYearMountains, stopAt } from "./trip/try-trips.ts";

/** The invented fleet of the examples, and hires that the firm must decide. */
const FLEET = ["cv2", "pv2", "lp4", "oc6", "ac4", "ze2", "wl4"] as const;
const vehicle = (name: (typeof FLEET)[number]): VehicleDescription =>
  parseVehicle(
    JSON.parse(readFileSync(new URL(`../../../examples/vehicles/${name}.json`, import.meta.url), "utf8")),
  );
const codes = (findings: readonly Finding[]) => findings.map(({ code }) => code);
const refusals = (findings: readonly Finding[]) => findings.filter(({ severity }) => severity === "refuse");
const item = (id: string, massKg: number, behindFrontAxleM: number, removable = false) => ({
  id,
  name: id,
  massKg,
  behindFrontAxleM,
  removable,
});
const adult = (id: string, massKg: number) => ({ id, kind: "adult" as const, massKg });
const driver = (born: string, firstCar: string, checkedOn: string): Driver => ({
  id: "a",
  name: "Invented Person",
  born,
  main: true,
  licence: {
    issuedBy: "GB",
    firstCarEntitlement: firstCar,
    categories: [{ category: "B", from: firstCar, to: "2055-01-01" }],
    endorsements: [],
    checkedOn,
  },
  faultIncidents3y: 0,
  disqualified3y: false,
});

describe("two adults for the first time in the panel van, seven nights in the Highlands in May", () => {
  const pv2 = vehicle("pv2");
  const party = {
    travellers: [adult("a", 75), adult("b", 68)],
    dogs: 0,
    experience: "first" as const,
  };
  const hire = { from: "2026-05-09T14:00", to: "2026-05-16T10:00", today: "2026-05-01" };
  const load: LoadInput["load"] = {
    seats: [],
    items: [item("luggage", 50, 3.6), item("food", 25, 2.8)],
    waterLitres: 95,
    fuelShare: 0.9,
    lpgCylinders: 2,
  };

  it("weigh 3,227 kg and may", () => {
    const { result, findings } = checkLoad({ vehicle: pv2, party, driverId: "a", load });
    expect(result.total.load.value).toBeCloseTo(3227, 9);
    expect(result.legal).toBe(true);
    expect(refusals(findings)).toEqual([]);
  });

  it("are allowed by licence, seats and season", () => {
    const drivers = [driver("1985-02-01", "2004-06-01", "2026-04-30")];
    const licence = checkLicence({ ...hire, vehicle: pv2, drivers, countries: ["GB"] });
    expect(licence.result.drivers[0]?.mayDrive).toBe("yes");
    const seats = checkSeats({ vehicle: pv2, party, today: hire.today });
    const season = checkSeason({ ...hire, vehicle: pv2, countries: ["GB"], coldestNightC: 2 });
    for (const { findings } of [licence, seats, season]) expect(refusals(findings)).toEqual([]);
  });

  const forecast = forecastTrip({ ...mayHighlands(), vehicle: pv2, runs: 300 });
  const battery = forecast.result.stores.find(({ store }) => store === "battery12")!;

  it("use about 20 Ah of 47 a night, so that two nights off the post are the most, and are warned of the second", () => {
    expect(battery.capacityAh?.value).toBe(47.5);
    expect(battery.usePerDayAh!.value).toBeGreaterThan(16);
    expect(battery.usePerDayAh!.value).toBeLessThan(24);
    expect(Math.floor(47.5 / battery.usePerDayAh!.value)).toBe(2);
    expect(forecast.findings).toMatchObject([
      { code: "trip.batteryTrouble", severity: "condition", basis: "physics", facts: { night: 2 } },
    ]);
    expect(battery.trouble.p50At).toBeNull();
  });

  it("hear that a third night off the post does not work", () => {
    const trip = mayHighlands().trip;
    const third = [stopAt("2026-05-09T18:00", "2026-05-12T10:00", false), ...trip.stops.slice(2)];
    const { result } = forecastTrip({
      ...mayHighlands(),
      vehicle: pv2,
      runs: 100,
      trip: { ...trip, stops: third },
    });
    expect(result.stores.find(({ store }) => store === "battery12")!.trouble.chance).toBeGreaterThan(0.9);
  });
});

describe("a family of six with four bicycles in the overcab, France in August", () => {
  const oc6 = vehicle("oc6");
  const children = [45, 38, 30, 25].map((massKg, k) => ({
    id: `c${k}`,
    kind: "child" as const,
    ageYears: [12, 10, 8, 6][k]!,
    massKg,
  }));
  const party = {
    travellers: [adult("a", 85), adult("b", 70), ...children],
    dogs: 0,
    experience: "first" as const,
  };
  const rack = item("bicycles and rack", 78, 6.3, true);
  const stays = [item("luggage", 90, 5), item("food", 40, 3), item("bedding", 60, 3.5)];
  const ask = (change: Partial<LoadInput["load"]> = {}, van = oc6): LoadInput => ({
    vehicle: van,
    party,
    driverId: "a",
    load: {
      seats: party.travellers.map(({ id, kind }) => ({
        travellerId: id,
        behindFrontAxleM: kind === "adult" ? 0.5 : 2,
      })),
      items: [rack, ...stays],
      waterLitres: 120,
      fuelShare: 0.9,
      lpgCylinders: 2,
      ...change,
    },
  });
  const over = (input: LoadInput) => -checkLoad(input).result.total.margin.value;

  it("is refused: 3,716 kg, 216 over (6.2 %), rear 2,149 and front 1,567", () => {
    const { result, findings } = checkLoad(ask());
    expect(result.total.load.value).toBeCloseTo(3716, 9);
    expect(over(ask())).toBeCloseTo(216, 9);
    expect(((100 * over(ask())) / 3500).toFixed(1)).toBe("6.2");
    expect([result.rear, result.front].map(({ load }) => Math.round(load.value))).toEqual([2149, 1567]);
    expect(result.legal).toBe(false);
    expect(refusals(findings).map(({ code, basis }) => [code, basis])).toEqual([
      ["masses.overMam", "law"],
      ["masses.overRearAxle", "law"],
    ]);
  });

  it("is offered a second vehicle, since nothing that may come off is enough", () => {
    const { result, findings } = checkLoad(ask());
    expect(result.leastChange.outcome).toBe("none");
    expect(findings[0]?.mends.map(({ code }) => code)).toContain("masses.secondVehicle");
  });

  it("is 116 kg over with 20 L of water, and 38 over without the bicycles as well", () => {
    expect(over(ask({ waterLitres: 20 }))).toBeCloseTo(116, 9);
    expect(over(ask({ waterLitres: 20, items: stays }))).toBeCloseTo(38, 9);
  });

  it("goes at 3,488 kg with 12 to spare and 1,926 on the rear axle once awning and second cylinder stay behind, and then wants weighing", () => {
    const bare = { ...oc6, masses: { ...oc6.masses, options: [] } };
    const { result, findings } = checkLoad(ask({ waterLitres: 20, items: stays, lpgCylinders: 1 }, bare));
    expect(result.total.load.value).toBeCloseTo(3488, 9);
    expect(result.total.margin.value).toBeCloseTo(12, 9);
    // 1,926.5 to the half kilogram
    expect(Math.floor(result.rear.load.value + 1e-6)).toBe(1926);
    expect(result.legal).toBe(true);
    expect(result.needsWeighbridge).toBe(true);
    expect(findings.every(({ severity }) => severity !== "refuse")).toBe(true);
  });

  it("has belts for six, and is asked for six vests in France", () => {
    const seats = checkSeats({ vehicle: oc6, party, today: "2026-07-01" });
    expect(refusals(seats.findings)).toEqual([]);
    const { findings } = checkCountries({
      vehicle: oc6,
      home: "GB",
      route: [{ country: "FR", enter: "2026-08-02", leave: "2026-08-16" }],
      today: "2026-07-01",
      papers: {},
      kitAboard: [],
      got: [],
      overhang: true,
    });
    expect(findings.some(({ code, about }) => code === "countries.kit" && about === "vest")).toBe(true);
  });
});

describe("two adults in the panel van, New Year in the Cairngorms, four nights off the post", () => {
  const pv2 = vehicle("pv2");
  const { result, findings } = forecastTrip({ ...newYearMountains(), vehicle: pv2, runs: 300 });
  const store = (id: string) => result.stores.find((each) => each.store === id)!;

  it("need about 32 Ah of 47 a night, most of it for the heater's fan", () => {
    const { capacityAh, usePerDayAh, draws } = store("battery12");
    expect(capacityAh?.value).toBe(47.5);
    // what the cold takes of the battery itself comes on top of what runs
    const own = draws.find(({ kind }) => kind === "leisureBattery")!.share;
    expect(usePerDayAh!.value * (1 - own)).toBeGreaterThan(28);
    expect(usePerDayAh!.value).toBeLessThan(38);
    expect(draws[0]?.kind).toBe("heating");
  });

  it("are told that the battery fails in the second night, and what would change that", () => {
    const found = findings.find(({ code }) => code === "trip.batteryTrouble");
    expect(found).toMatchObject({ severity: "condition", facts: { night: 2 } });
    expect(store("battery12").trouble.chance).toBeGreaterThan(0.95);
    expect(found?.mends.map(({ code }) => code)).toContain("trip.hookUpEverySecondNight");
  });

  it("lose the water to the frost valve once the heater stops, and drain instructions are a condition", () => {
    expect(codes(findings)).toContain("trip.frostValve");
    const season = checkSeason({
      vehicle: pv2,
      from: "2026-12-29T12:00",
      to: "2027-01-02T16:00",
      countries: ["GB"],
      coldestNightC: -6,
    });
    expect(season.findings).toMatchObject([{ code: "season.frost", severity: "condition" }]);
  });

  it("have gas enough, since it is propane", () => {
    expect(store("lpg").trouble.chance).toBe(0);
    expect(codes(findings)).not.toContain("trip.butaneCold");
  });

  it("get through with a post every second night", () => {
    const { trip } = newYearMountains();
    const stops = [
      stopAt("2026-12-29T16:00", "2026-12-30T11:00", false),
      stopAt("2026-12-30T14:00", "2026-12-31T11:00", true),
      stopAt("2026-12-31T14:00", "2027-01-01T11:00", false),
      stopAt("2027-01-01T14:00", "2027-01-02T11:00", true),
    ];
    const plugged = forecastTrip({
      ...newYearMountains(),
      vehicle: pv2,
      runs: 300,
      trip: { ...trip, stops },
    });
    const chance = plugged.result.stores.find((each) => each.store === "battery12")!.trouble.chance;
    expect(chance).toBeLessThan(0.2);
  });

  it("last longer in the winterised low-profile", () => {
    const other = forecastTrip({ ...newYearMountains(), vehicle: vehicle("wl4"), runs: 100 }).result;
    const first = (answer: typeof result) =>
      answer.stores.find((each) => each.store === "battery12")!.trouble.p50At ?? "9999";
    expect(first(other) > first(result)).toBe(true);
  });
});

describe("what the tool says is missing for the hires that it cannot decide alone", () => {
  const looked = (...gates: Parameters<typeof listMissingRules>[0]["gates"]) => gates;
  const route = {
    "a heavy vehicle to Germany and Austria in June": [["GB", "FR", "DE", "AT"], "2026-06-06"],
    "five people and a dog on a ferry": [["GB", "IE"], "2026-07-04"],
    "skiing in Austria through Germany in February": [["GB", "FR", "DE", "AT"], "2027-02-06"],
    "the tunnel to Spain and Portugal in March": [["GB", "FR", "ES", "PT"], "2026-03-03"],
  } as const;
  it.each(Object.entries(route))(
    "%s: gates nobody looked at, and rules from memory or unsettled",
    (_, [countries, on]) => {
      const missing = listMissingRules({ countries, on, gates: looked() });
      const unseen = missing.filter(({ kind }) => kind === "gateNotChecked").map(({ gate }) => gate);
      expect(unseen).toEqual(expect.arrayContaining(["countries", "crossing", "licence"]));
      expect(missing.some(({ kind }) => kind === "ruleFromMemory")).toBe(true);
      expect(missing.filter(({ kind }) => kind === "countryNotInData")).toEqual([]);
    },
  );
});

describe("two in the campervan that drives on a battery, New Year off the post", () => {
  it("hear that the battery gets them home but not through the nights, and where the heat stops", () => {
    const { result, findings } = forecastTrip({ ...newYearMountains(), vehicle: vehicle("ze2"), runs: 50 });
    expect(result.stores.find(({ store }) => store === "tractionBattery")!.trouble.chance).toBe(0);
    expect(findings.find(({ code }) => code === "trip.tractionBatteryLow")).toMatchObject({
      severity: "condition",
      mends: [{ code: "trip.chargeOnTheWay" }, { code: "trip.lowerNightHeating" }],
    });
    expect(codes(findings)).toContain("trip.frostValve");
  });
});
