/** Tyres: load index, speed symbol, pressure for a load. */
import * as z from "zod/mini";
import { BadInput } from "../base/bad-input.ts";
import { above0, between } from "./args.ts";
import { entry } from "./entry.ts";

/** kg per tyre for load index 0 to 150. */
const LOAD_KG = [
  45, 46.2, 47.5, 48.7, 50, 51.5, 53, 54.5, 56, 58, 60, 61.5, 63, 65, 67, 69, 71, 73, 75, 77.5, 80, 82.5, 85,
  87.5, 90, 92.5, 95, 97.5, 100, 103, 106, 109, 112, 115, 118, 121, 125, 128, 132, 136, 140, 145, 150, 155,
  160, 165, 170, 175, 180, 185, 190, 195, 200, 206, 212, 218, 224, 230, 236, 243, 250, 257, 265, 272, 280,
  290, 300, 307, 315, 325, 335, 345, 355, 365, 375, 387, 400, 412, 425, 437, 450, 462, 475, 487, 500, 515,
  530, 545, 560, 580, 600, 615, 630, 650, 670, 690, 710, 730, 750, 775, 800, 825, 850, 875, 900, 925, 950,
  975, 1000, 1030, 1060, 1090, 1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360, 1400, 1450, 1500, 1550, 1600,
  1650, 1700, 1750, 1800, 1850, 1900, 1950, 2000, 2060, 2120, 2180, 2240, 2300, 2360, 2430, 2500, 2575, 2650,
  2725, 2800, 2900, 3000, 3075, 3150, 3250, 3350,
];

/** Load of one tyre by its load index (0 to 150), kg. */
export function loadIndexKg(index: number): number {
  return LOAD_KG[index]!;
}

export const SPEED_SYMBOL_KMH = {
  J: 100,
  K: 110,
  L: 120,
  M: 130,
  N: 140,
  P: 150,
  Q: 160,
  R: 170,
  S: 180,
  T: 190,
  U: 200,
  H: 210,
  V: 240,
} as const;

/** Pressure for a load below the rated one: P = Prated (load/rated)^1.25, in the unit of the rated pressure. */
export function pressureForLoad(ratedPressure: number, ratedLoadKg: number, loadKg: number): number {
  return ratedPressure * (loadKg / ratedLoadKg) ** 1.25;
}

const index = z.int().check(z.minimum(0), z.maximum(150));

export const TYRE_FORMULAS = [
  entry("tyre.loadIndex", "kg", "iso-4000-1", "load index", { index }, (a) => loadIndexKg(a.index)),
  entry(
    "tyre.axleCapacity",
    "kg",
    "iso-4000-1",
    "single tyres",
    { index, tyres: z.literal([2, 4]) },
    (a) => a.tyres * loadIndexKg(a.index),
  ),
  entry(
    "tyre.speedSymbol",
    "km/h",
    "iso-4000-1",
    "speed symbol",
    { symbol: z.enum(Object.keys(SPEED_SYMBOL_KMH) as (keyof typeof SPEED_SYMBOL_KMH)[]) },
    (a) => SPEED_SYMBOL_KMH[a.symbol],
  ),
  entry(
    "tyre.pressureForLoad",
    "same as ratedPressure",
    "etrto",
    "exponent 1.25 on load",
    { ratedPressure: above0(2000), ratedLoadKg: above0(10_000), loadKg: between(0, 10_000) },
    (a) => {
      if (a.loadKg > a.ratedLoadKg) {
        throw new BadInput([
          {
            path: "loadKg",
            expected: `expected at most ratedLoadKg (${a.ratedLoadKg}): the tyre may not carry more`,
          },
        ]);
      }
      return pressureForLoad(a.ratedPressure, a.ratedLoadKg, a.loadKg);
    },
  ),
];
