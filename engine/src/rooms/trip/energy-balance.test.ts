import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { forecastTrip } from "./forecast-trip.ts";
import { newYearMountains } from "./try-trips.ts";

/** The night that `docs/energy-balance.md` works out by hand. */
const FROM = "2026-12-29T22:00";
const TO = "2026-12-30T08:00";
const page = readFileSync(join(import.meta.dirname, "../../../../docs/energy-balance.md"), "utf8");
const input = newYearMountains();
const { result } = forecastTrip({ ...input, runs: 1, spread: false });
const [from, to] = [FROM, TO].map((at) => result.axis.at.indexOf(at)) as [number, number];
const levels = (id: string) => result.stores.find(({ store }) => store === id)!.band.p50;

/** Mean over the night of what is known at its full hours, by trapezia. */
function meanOf(values: readonly number[]): number {
  const night = values.slice(from, to + 1);
  const ends = (night[0]! + night.at(-1)!) / 2;
  return (night.slice(1, -1).reduce((sum, value) => sum + value, 0) + ends) / (night.length - 1);
}

/** Numbers of the first line of the page that holds the words. */
function printed(words: string): number[] {
  const line = page.split("\n").find((one) => one.includes(words));
  expect(line, words).toBeDefined();
  return [...line!.matchAll(/\d+\.\d+|\d+(?= Wh)/g)].map(([text]) => Number(text));
}

describe("one winter night by hand", () => {
  it("stands on the page as the forecast has it", () => {
    const [lpgFrom, lpgTo] = printed("| **the forecast**");
    expect(levels("lpg")[from]).toBeCloseTo(lpgFrom!, 2);
    expect(levels("lpg")[to]).toBeCloseTo(lpgTo!, 2);
    const taken = page.match(/The forecast takes (\d+) − (\d+) = (\d+) Wh/)!;
    expect(Math.abs(levels("battery12")[from]! - Number(taken[1]))).toBeLessThan(1);
    expect(Math.abs(levels("battery12")[to]! - Number(taken[2]))).toBeLessThan(1);
    expect(Number(taken[1]) - Number(taken[2])).toBe(Number(taken[3]));
    expect(meanOf(result.cabinC.p50)).toBeCloseTo(15.2, 1);
    expect(meanOf(result.outsideC.p50)).toBeCloseTo(0.15, 1);
  });

  it("gas for the warmth that the van loses agrees with the forecast to 3 %", () => {
    const { lossWK, airChangesPerHour, volumeM3, capacityWhK } = input.vehicle.body;
    const hours = to - from;
    const perKelvin = lossWK + 0.333 * airChangesPerHour * volumeM3;
    const lost = perKelvin * (meanOf(result.cabinC.p50) - meanOf(result.outsideC.p50)) * hours;
    const cooled = capacityWhK * (result.cabinC.p50[from]! - result.cabinC.p50[to]!);
    const people = 2 * 75 * hours;
    const breakfastWh = 125;
    const heater = (lost - cooled - people - breakfastWh / 2) / (12_870 * 0.9);
    // the page takes the fridge and the hot water from the forecast itself
    const [fridge, water] = [0.035, 0.035];
    const byHand = heater + fridge + breakfastWh / 12_870 + water;
    const lived = levels("lpg")[from]! - levels("lpg")[to]!;
    expect(byHand / lived).toBeGreaterThan(0.97);
    expect(byHand / lived).toBeLessThan(1.03);
  });

  it("fan, stand-by and lights agree with what the battery gave to a fifth, the cold not counted", () => {
    const { lossWK, airChangesPerHour, volumeM3 } = input.vehicle.body;
    const holdingW =
      (lossWK + 0.333 * airChangesPerHour * volumeM3) * (14 - meanOf(result.outsideC.p50)) - 150;
    const fanWh = (holdingW / (4000 / 4)) * 18 * (to - from);
    const byHand = fanWh + 10 + 25;
    const lived = levels("battery12")[from]! - levels("battery12")[to]!;
    expect(byHand / lived).toBeGreaterThan(0.8);
    expect(byHand / lived).toBeLessThan(1.05);
  });
});
