import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anchorsModule } from "../../anchors/anchors-from-csv.mjs";
import { monthMeans, nodesKeepingMeans } from "./between-months.ts";
import { clearnessKnots, knotsMean } from "./clearness.ts";
import { daySun, shareBefore } from "./day-sun.ts";
import { leaveOneOut } from "./leave-one-out.ts";
import { climateNormal } from "./normal.ts";
import { liveWeather } from "./weather.ts";

const HIGHLANDS = { latitudeDeg: 57.1, longitudeDeg: -4.7, elevationM: 30 };
const tripDays = (count: number, from = "2026-05-01") =>
  Array.from({ length: count }, (_, k) => ({
    ...HIGHLANDS,
    date: new Date(Date.parse(from) + k * 86_400_000).toISOString().slice(0, 10),
    utcOffsetH: 1,
  }));
const mean = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0) / values.length;

describe("climate normals", () => {
  it("are the table that ships beside them", () => {
    const at = (name: string) => readFileSync(new URL(name, import.meta.url), "utf8");
    expect(at("anchors.generated.ts")).toBe(anchorsModule(at("../../anchors/anchors.csv")));
  });

  it("find stations they have not seen within the goals, by region", () => {
    const found = leaveOneOut();
    console.warn(
      found
        .map(
          (r) =>
            `${r.region}: ${r.stations} stations, ${r.meanK?.toFixed(2) ?? "–"} K, radiation ${r.radiation === null ? "–" : `${(r.radiation * 100).toFixed(1)} %`}`,
        )
        .join("\n"),
    );
    const by = Object.fromEntries(found.map((r) => [r.region, r]));
    expect(by["north-west"]!.meanK!).toBeLessThanOrEqual(0.6);
    expect(by.Spain!.meanK!).toBeLessThanOrEqual(1.5);
    expect(by.elsewhere!.meanK!).toBeLessThanOrEqual(1);
    expect(by["north-west"]!.radiation!).toBeLessThanOrEqual(0.08);
    expect(by.elsewhere!.radiation!).toBeLessThanOrEqual(0.08);
  });

  it("keep minimum, mean and maximum in order and say on which stations they rest", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 35, max: 71, noNaN: true }),
        fc.double({ min: -10, max: 28, noNaN: true }),
        fc.integer({ min: 0, max: 2500 }),
        fc.integer({ min: 1, max: 12 }),
        (latitudeDeg, longitudeDeg, elevationM, month) => {
          const normal = climateNormal({ latitudeDeg, longitudeDeg, elevationM, month });
          expect(normal.minC).toBeLessThanOrEqual(normal.meanC);
          expect(normal.maxC).toBeGreaterThanOrEqual(normal.meanC);
          expect(normal.clearness ?? 0.3).toBeGreaterThan(0);
          expect(normal.clearness ?? 0.3).toBeLessThan(0.85);
          expect(normal.stations.reduce((sum, station) => sum + station.weight, 0)).toBeCloseTo(1, 9);
        },
      ),
      { numRuns: 100 },
    );
  });

  it("keep every monthly mean when they are read day by day", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -20, max: 35, noNaN: true }), { minLength: 12, maxLength: 12 }),
        (normals) => {
          for (const [month, value] of monthMeans(nodesKeepingMeans(normals)).entries()) {
            expect(value).toBeCloseTo(normals[month]!, 9);
          }
        },
      ),
      { numRuns: 50 },
    );
  });

  it("keep the month's clearness over its daily distribution", () => {
    for (let k = 0.2; k < 0.72; k += 0.02) {
      const knots = clearnessKnots(k);
      expect(knotsMean(knots)).toBeCloseTo(k, 4);
      expect(Math.max(...knots)).toBeLessThanOrEqual(0.82);
    }
  });
});

describe("the weather of a trip", () => {
  it("is the same for the same seed, another for another, and does not depend on how many runs there are", () => {
    const [a, b, c, few] = [1, 1, 2, 1].map((seed, k) => {
      const weather = liveWeather(tripDays(3), { runs: k === 3 ? 5 : 20, seed, spread: true });
      const [air, sun] = [new Float64Array(weather.runs), new Float64Array(weather.runs)];
      weather.fill(1, 13, 0.25, air, sun);
      return [...air, ...sun];
    });
    expect(a).toEqual(b);
    expect(a).not.toEqual(c);
    expect(few!.slice(0, 5)).toEqual(a!.slice(0, 5));
  });

  it("gives each day exactly its share of what the sun sends, however the day is cut", () => {
    for (const [latitudeDeg, dayOfYear, offset] of [
      [57, 135, 1],
      [57, 355, 0],
      [69.6, 172, 2],
      [40, 200, 2],
    ] as const) {
      const sun = daySun(latitudeDeg, -4, dayOfYear, offset);
      for (const steps of [24, 96, 7]) {
        let sum = 0;
        for (let k = 0; k < steps; k++)
          sum += shareBefore(sun, ((k + 1) * 24) / steps) - shareBefore(sun, (k * 24) / steps);
        expect(sum).toBeCloseTo(1, 9);
      }
    }
  });

  it("halving the step leaves the energy of the step as it was", () => {
    const weather = liveWeather(tripDays(2), { runs: 8, seed: 3, spread: true });
    const [air, whole, first, second] = [0, 1, 2, 3].map(() => new Float64Array(8)) as [
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
    ];
    for (let hour = 0; hour < 24; hour++) {
      weather.fill(1, hour, 1, air, whole);
      weather.fill(1, hour, 0.5, air, first);
      weather.fill(1, hour + 0.5, 0.5, air, second);
      for (let i = 0; i < 8; i++) expect((first[i]! + second[i]!) / 2).toBeCloseTo(whole[i]!, 9);
    }
  });

  it("stays at the monthly mean on average, with the spread that daily series show", () => {
    const runs = 4000;
    const still = liveWeather(tripDays(31), { runs: 1, seed: 1, spread: false });
    const lived = liveWeather(tripDays(31), { runs, seed: 1, spread: true });
    const one = [new Float64Array(1), new Float64Array(1)] as const;
    const many = [new Float64Array(runs), new Float64Array(runs)] as const;
    const daily = new Float64Array(runs);
    let [stillSum, livedSum, stillSun, livedSun] = [0, 0, 0, 0];
    for (let day = 0; day < 31; day++) {
      for (let hour = 0; hour < 24; hour++) {
        still.fill(day, hour, 1, ...one);
        lived.fill(day, hour, 1, ...many);
        stillSum += one[0][0]! / 744;
        stillSun += one[1][0]!;
        livedSum += mean(many[0]) / 744;
        livedSun += mean(many[1]);
        if (day === 15) for (let i = 0; i < runs; i++) daily[i] = daily[i]! + many[0][i]! / 24;
      }
    }
    expect(stillSum).toBeCloseTo(climateNormal({ ...HIGHLANDS, month: 5 }).meanC, 1);
    expect(Math.abs(livedSum - stillSum)).toBeLessThan(0.1);
    expect(Math.abs(livedSun / stillSun - 1)).toBeLessThan(0.01);
    const centre = mean(daily);
    const sd = Math.sqrt(daily.reduce((sum, value) => sum + (value - centre) ** 2, 0) / runs);
    expect(Math.abs(sd - 3.2)).toBeLessThan(0.15);
  });

  it("does not jump at midnight", () => {
    const weather = liveWeather(tripDays(3), { runs: 50, seed: 9, spread: true });
    const [before, after, sun] = [0, 1, 2].map(() => new Float64Array(50)) as [
      Float64Array,
      Float64Array,
      Float64Array,
    ];
    weather.fill(0, 23.999, 0.001, before, sun);
    weather.fill(1, 0, 0.001, after, sun);
    for (let i = 0; i < 50; i++) expect(Math.abs(after[i]! - before[i]!)).toBeLessThan(0.1);
  });

  it("is dark in the polar night and says where it is weakly known", () => {
    const days = [
      { latitudeDeg: 69.9, longitudeDeg: 27, elevationM: 100, date: "2026-12-21", utcOffsetH: 1 },
    ];
    const weather = liveWeather(days, { runs: 3, seed: 1, spread: true });
    const [air, sun] = [new Float64Array(3), new Float64Array(3)];
    weather.fill(0, 12, 1, air, sun);
    expect([...sun]).toEqual([0, 0, 0]);
    expect(weather.notes[0]!.weak).toBe(true);
  });

  it("refuses a day outside the trip", () => {
    const weather = liveWeather(tripDays(1), { runs: 1, seed: 1, spread: false });
    expect(() => weather.fill(1, 0, 1, new Float64Array(1), new Float64Array(1))).toThrow(RangeError);
  });
});
