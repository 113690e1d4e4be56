/** Cables: resistance of copper cores and voltage drop of flexible cords. */
import * as z from "zod/mini";
import { BadInput } from "../base/bad-input.ts";
import { above0, between } from "./args.ts";
import { entry } from "./entry.ts";

/** Maximum resistance at 20 °C, Ω/km, plain copper class 5, by area in mm². */
export const CLASS_5_OHM_PER_KM: ReadonlyMap<number, number> = new Map([
  [0.5, 39],
  [0.75, 26],
  [1, 19.5],
  [1.5, 13.3],
  [2.5, 7.98],
  [4, 4.95],
  [6, 3.3],
  [10, 1.91],
  [16, 1.21],
  [25, 0.78],
  [35, 0.554],
]);

/** Voltage drop, mV per ampere and metre of run, two-core flexible cord at 60 °C, and its current rating, A. */
const CORD: ReadonlyMap<number, readonly [mvPerAm: number, ratingA: number | null]> = new Map([
  [0.5, [93, 3]],
  [0.75, [62, 6]],
  [1, [46, 10]],
  [1.25, [37, 13]],
  [1.5, [32, 16]],
  [2.5, [19, 25]],
  [4, [12, 32]],
]);

function look<T>(table: ReadonlyMap<number, T>, areaMm2: number): T {
  const found = table.get(areaMm2);
  if (found !== undefined) return found;
  throw new BadInput([
    {
      path: "areaMm2",
      expected: `expected one of the sizes in the table: ${[...table.keys()].join(", ")} mm²`,
    },
  ]);
}

/** Resistance of copper at another temperature than 20 °C. */
export function resistanceAtTemperature(resistance20: number, temperatureC: number): number {
  return (resistance20 * (234.5 + temperatureC)) / 254.5;
}

/** Resistance of one core, Ω/km, class 5 plain copper. Throws BadInput for a size not in the table. */
export function cableResistanceOhmPerKm(areaMm2: number, temperatureC: number): number {
  return resistanceAtTemperature(look(CLASS_5_OHM_PER_KM, areaMm2), temperatureC);
}

/** Voltage drop of a two-core flexible cord at 60 °C over its length, V. Throws BadInput for a size not in the table. */
export function cordVoltageDropV(areaMm2: number, lengthM: number, currentA: number): number {
  return (look(CORD, areaMm2)[0] * currentA * lengthM) / 1000;
}

/** Cross-section of an American wire gauge, mm². */
export function awgAreaMm2(gauge: number): number {
  return (Math.PI / 4) * (0.127 * 92 ** ((36 - gauge) / 39)) ** 2;
}

const lengthM = between(0, 10_000);
const currentA = between(0, 10_000);
const areaMm2 = above0(1000);
const temperatureC = between(-50, 250);

export const CABLE_FORMULAS = [
  entry(
    "cable.resistance",
    "Ω/km",
    "iec-60228",
    "table 3, class 5, plain copper",
    { areaMm2, temperatureC },
    (a) => cableResistanceOhmPerKm(a.areaMm2, a.temperatureC),
  ),
  entry("cable.voltageDrop", "V", "bs-7671-4f3", "table 4F3B", { areaMm2, lengthM, currentA }, (a) =>
    cordVoltageDropV(a.areaMm2, a.lengthM, a.currentA),
  ),
  entry(
    "cable.cordRating",
    "A",
    "bs-7671-4f3",
    "table 4F3A, single phase",
    { areaMm2 },
    (a) => look(CORD, a.areaMm2)[1]!,
  ),
  entry(
    "cable.loopDrop",
    "V",
    "iec-60228",
    "there and back, class 5",
    { areaMm2, lengthEachWayM: lengthM, currentA, temperatureC },
    (a) => (2 * a.lengthEachWayM * a.currentA * cableResistanceOhmPerKm(a.areaMm2, a.temperatureC)) / 1000,
  ),
  entry(
    "cable.resistanceAtTemperature",
    "Ω",
    "iec-60228-temperature",
    "(234.5 + t)/254.5",
    { at20Ohm: between(0, 1e6), temperatureC },
    (a) => resistanceAtTemperature(a.at20Ohm, a.temperatureC),
  ),
  entry("cable.awgArea", "mm²", "astm-b258", "d = 0.127 · 92^((36−n)/39)", { gauge: between(0, 40) }, (a) =>
    awgAreaMm2(a.gauge),
  ),
  entry(
    "cable.dropLimit",
    "%",
    "bs-7671-4ab",
    "public supply",
    { use: z.enum(["lighting", "other"]) },
    (a) => (a.use === "lighting" ? 3 : 5),
  ),
];
