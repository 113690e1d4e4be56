/// <reference path="./psychrolib.d.ts" />
import * as astronomy from "astronomy-engine";
import fc from "fast-check";
import psychrolib from "psychrolib";
import { describe, expect, it } from "vitest";
import { dewPointC } from "./air.ts";
import { drawOffKgH, liquidDensityKgM3, vapourPressureBar } from "./lpg.ts";
import { axleLoads } from "./mass.ts";
import { quantile } from "./statistics.ts";
import { hourlyShare } from "./sun.ts";
import { sunPosition, sunRiseSet } from "./sun-position.ts";
import { loadIndexKg } from "./tyre.ts";

describe("the sun", () => {
  it("stands where a general astronomy library puts it, within 0.02 degrees of altitude", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 35, max: 71, noNaN: true }),
        fc.double({ min: -24, max: 30, noNaN: true }),
        fc.integer({ min: Date.UTC(2020, 0, 1), max: Date.UTC(2040, 0, 1) }),
        (latitude, longitude, ms) => {
          const date = new Date(ms);
          const observer = new astronomy.Observer(latitude, longitude, 0);
          const place = astronomy.Equator(astronomy.Body.Sun, date, observer, true, true);
          const theirs = astronomy.Horizon(date, observer, place.ra, place.dec);
          expect(Math.abs(sunPosition(latitude, longitude, ms).altitudeDeg - theirs.altitude)).toBeLessThan(
            0.02,
          );
        },
      ),
      { numRuns: 200 },
    );
  });

  it("rises and sets within a minute of the same library over the year", () => {
    const observer = new astronomy.Observer(57.1, -3.7, 0);
    for (let day = 0; day < 365; day += 13) {
      const date = new Date(Date.UTC(2026, 0, 1 + day)).toISOString().slice(0, 10);
      const ours = sunRiseSet(57.1, -3.7, date, "Europe/London");
      const noon = new Date(`${date}T12:00:00Z`);
      const rise = astronomy.SearchRiseSet(astronomy.Body.Sun, observer, +1, noon, -1);
      const set = astronomy.SearchRiseSet(astronomy.Body.Sun, observer, -1, noon, 1);
      expect(Math.abs(ours.sunrise! - rise!.date.getTime()), date).toBeLessThan(60_000);
      expect(Math.abs(ours.sunset! - set!.date.getTime()), date).toBeLessThan(60_000);
    }
  });

  it("shares out nearly the whole day over the 24 mid-hours, but not exactly (so the core renormalises)", () => {
    for (const [sunset, sum] of [
      [60, 1.0071],
      [75, 0.9957],
      [90, 0.9936],
      [105, 0.9991],
      [120, 1.0082],
    ] as const) {
      let total = 0;
      for (let hour = 0; hour < 24; hour++) total += hourlyShare((hour + 0.5 - 12) * 15, sunset);
      expect(total).toBeCloseTo(sum, 4);
    }
  });
});

describe("air and gas", () => {
  it("agree with a psychrometric library on the dew point within 0.1 K", () => {
    psychrolib.SetUnitSystem(psychrolib.SI);
    for (const [airC, pct] of [
      [20, 50],
      [5, 90],
      [30, 40],
    ] as const) {
      expect(
        Math.abs(dewPointC(airC, pct) - psychrolib.GetTDewPointFromRelHum(airC, pct / 100)),
      ).toBeLessThan(0.1);
    }
  });

  it("give more pressure and less dense liquid as they warm", () => {
    for (const fuel of ["propane", "butane"] as const) {
      for (let c = -50; c < 65; c++) {
        expect(vapourPressureBar(fuel, c + 1)).toBeGreaterThan(vapourPressureBar(fuel, c));
        expect(liquidDensityKgM3(fuel, c + 1)).toBeLessThan(liquidDensityKgM3(fuel, c));
      }
    }
  });

  it("draw less vapour in the cold and with less liquid, and butane none in frost", () => {
    expect(drawOffKgH("propane", 0, 0.3, 12, 1.5)).toBeGreaterThan(drawOffKgH("propane", -15, 0.3, 12, 1.5));
    expect(drawOffKgH("propane", 0, 0.3, 12, 1.5)).toBeGreaterThan(drawOffKgH("propane", 0, 0.1, 12, 1.5));
    expect(drawOffKgH("butane", -5, 0.3, 12, 1.1)).toBe(0);
  });
});

describe("masses and numbers", () => {
  it("both axles together carry everything", () => {
    const item = fc.record({
      massKg: fc.double({ min: 0, max: 500, noNaN: true }),
      behindFrontAxleM: fc.double({ min: -1, max: 7, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(item), (items) => {
        const { frontKg, rearKg } = axleLoads(3.8, items);
        const total = items.reduce((sum, one) => sum + one.massKg, 0);
        expect(frontKg + rearKg).toBeCloseTo(total, 6);
      }),
    );
  });

  it("the load indices run in the steps of a geometric series, within 2 %", () => {
    for (let index = 0; index <= 150; index++) {
      expect(Math.abs(loadIndexKg(index) / (45 * 10 ** (index / 80)) - 1), String(index)).toBeLessThan(0.02);
    }
  });

  it("a quantile lies between the extremes and does not disturb its input", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (values, p) => {
          const before = [...values];
          const q = quantile(values, p);
          expect(values).toEqual(before);
          expect(q).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
          expect(q).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
        },
      ),
    );
  });
});
