import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BadInput } from "../base/bad-input.ts";
import { isSource } from "../sources/register.ts";
import { formula, listFormulas } from "./book.ts";

const FIXED_IDS =
  `sun.extraterrestrialDaily sun.dayLength sun.position sun.riseSet sun.clearSky sun.hourlyShare
solar.cellTemperature solar.power air.saturationPressure air.dewPoint air.pressure heat.uValue heat.ventilationLoss
water.heatEnergy water.heatTime battery.runTime battery.peukert cable.resistance cable.voltageDrop mains.current
gas.vapourPressure gas.liquidDensity gas.energy mass.minimumPayload mass.axleLoads tyre.loadIndex tyre.pressureForLoad
fuel.litresPer100km level.blockHeight vin.checkDigit statistics.normalUpdate statistics.quantile climate.normal`.split(
    /\s+/,
  );

const problemOf = (id: string, args: unknown): string => {
  try {
    formula(id, args);
  } catch (error) {
    if (error instanceof BadInput) return error.message;
    throw error;
  }
  return "accepted";
};

describe("the formula book", () => {
  it("holds every id that outside checks call", () => {
    const ids = new Set(listFormulas().map((listed) => listed.id));
    expect(FIXED_IDS.filter((id) => !ids.has(id))).toEqual([]);
  });

  it("cites a registered source for every formula and gives a unit", () => {
    for (const listed of listFormulas()) {
      expect(isSource(listed.sourceId), listed.id).toBe(true);
      expect(listed.unit, listed.id).not.toBe("");
    }
  });

  it("names ids near a mistyped one", () => {
    expect(problemOf("sun.pos", {})).toContain("sun.position");
    expect(problemOf("gas.vaporPressure", {})).toContain("gas.vapourPressure");
  });

  it("names the field of a missing, unknown, wrong, infinite or out-of-range argument", () => {
    expect(problemOf("sun.clearSky", {})).toContain("altitudeDeg");
    expect(problemOf("sun.clearSky", { altitudeDeg: 10, moon: 1 })).toContain("moon");
    expect(problemOf("sun.clearSky", { altitudeDeg: "10" })).toContain("altitudeDeg");
    expect(problemOf("sun.clearSky", { altitudeDeg: Number.NaN })).toContain("altitudeDeg");
    expect(problemOf("mains.current", { powerW: Number.POSITIVE_INFINITY, volts: 230 })).toContain("powerW");
    expect(problemOf("gas.vapourPressure", { fuel: "propane", temperatureC: 80 })).toContain("temperatureC");
    expect(problemOf("gas.vapourPressure", { fuel: "methane", temperatureC: 0 })).toContain("fuel");
    expect(
      problemOf("heat.uValue", {
        layers: [{ thicknessM: 1, conductivityWmK: 0 }],
        insideM2KW: 0.1,
        outsideM2KW: 0,
      }),
    ).toContain("layers.0.conductivityWmK");
    expect(problemOf("cable.voltageDrop", { areaMm2: 3, lengthM: 1, currentA: 1 })).toContain("areaMm2");
    expect(problemOf("sun.position", { latitudeDeg: 0, longitudeDeg: 0, instant: "noon" })).toContain(
      "instant",
    );
    expect(
      problemOf("sun.riseSet", { latitudeDeg: 0, longitudeDeg: 0, date: "2026-02-30", timeZone: "UTC" }),
    ).toContain("date");
    expect(
      problemOf("sun.riseSet", { latitudeDeg: 0, longitudeDeg: 0, date: "2026-02-20", timeZone: "Mars" }),
    ).toContain("timeZone");
    expect(problemOf("vin.checkDigit", { vin: "1M8GDM9AXKP04278I" })).toContain("vin");
    expect(problemOf("statistics.quantile", { values: [], p: 0.5 })).toContain("values");
    expect(problemOf("water.heatEnergy", { litres: 1, fromC: 50, toC: 20 })).toContain("toC");
    expect(problemOf("tyre.pressureForLoad", { ratedPressure: 5, ratedLoadKg: 900, loadKg: 950 })).toContain(
      "loadKg",
    );
    expect(problemOf("mains.current", null)).not.toBe("accepted");
  });

  it("never answers with a number that is not finite, whatever it is given", () => {
    const anything = fc.oneof(
      fc.double(),
      fc.constantFrom("propane", "net", "2026-06-21", "UTC", null),
      fc.array(fc.double(), { maxLength: 3 }),
    );
    for (const listed of listFormulas()) {
      const names = Object.keys(listed.args.properties ?? {});
      fc.assert(
        fc.property(fc.array(anything, { minLength: names.length, maxLength: names.length }), (values) => {
          const args = Object.fromEntries(names.map((name, at) => [name, values[at]]));
          if (problemOf(listed.id, args) !== "accepted") return;
          const numbers = JSON.stringify(formula(listed.id, args).value, (_, value) =>
            typeof value === "number" && !Number.isFinite(value) ? "not finite" : value,
          );
          expect(numbers).not.toContain("not finite");
        }),
        { numRuns: 60 },
      );
    }
  });

  it("says that the sun stays up or down where it does not cross the horizon", () => {
    const at = (date: string) =>
      formula("sun.riseSet", { latitudeDeg: 69.65, longitudeDeg: 18.96, date, timeZone: "Europe/Oslo" })
        .value;
    expect(at("2026-06-21")).toMatchObject({ sunrise: null, sunset: null, polar: "day" });
    expect(at("2026-12-21")).toMatchObject({ sunrise: null, sunset: null, polar: "night" });
    expect(at("2026-03-21")).not.toHaveProperty("polar");
  });
});
