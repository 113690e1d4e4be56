/** Water and its heating; a litre is taken as a kilogram. */
import * as z from "zod/mini";
import { BadInput } from "../base/bad-input.ts";
import { above0, between } from "./args.ts";
import { entry } from "./entry.ts";

export const SPECIFIC_HEAT_WATER_KJKGK = 4.186;

/** Energy to heat water, kWh. */
export function waterHeatKwh(
  litres: number,
  fromC: number,
  toC: number,
  specificHeatKJkgK = SPECIFIC_HEAT_WATER_KJKGK,
): number {
  return (litres * specificHeatKJkgK * (toC - fromC)) / 3600;
}

/** Time to heat water with no loss, min. */
export function waterHeatMinutes(
  litres: number,
  fromC: number,
  toC: number,
  powerKw: number,
  specificHeatKJkgK = SPECIFIC_HEAT_WATER_KJKGK,
): number {
  return (waterHeatKwh(litres, fromC, toC, specificHeatKJkgK) / powerKw) * 60;
}

/** Density of air-free water at 1 atm from 0 to 40 °C, kg/m³. */
export function waterDensityKgM3(temperatureC: number): number {
  const t = temperatureC;
  return 999.97495 * (1 - ((t - 3.983035) ** 2 * (t + 301.797)) / (522528.9 * (t + 69.34881)));
}

/** Pressure under a head of liquid, Pa. */
export function headPressurePa(headM: number, densityKgM3: number): number {
  return densityKgM3 * 9.81 * headM;
}

const heating = {
  litres: between(0, 100_000),
  fromC: between(-10, 150),
  toC: between(-10, 150),
  specificHeatKJkgK: z.optional(between(1, 10)),
};

function mustWarm(a: { readonly fromC: number; readonly toC: number }): void {
  if (a.toC < a.fromC)
    throw new BadInput([{ path: "toC", expected: `expected at least fromC (${a.fromC})` }]);
}

export const WATER_FORMULAS = [
  entry("water.heatEnergy", "kWh", "heat-capacity-water", "m c ΔT", heating, (a) => {
    mustWarm(a);
    return waterHeatKwh(a.litres, a.fromC, a.toC, a.specificHeatKJkgK);
  }),
  entry(
    "water.heatTime",
    "min",
    "heat-capacity-water",
    "m c ΔT / P",
    { ...heating, powerKw: above0(1000) },
    (a) => {
      mustWarm(a);
      return waterHeatMinutes(a.litres, a.fromC, a.toC, a.powerKw, a.specificHeatKJkgK);
    },
  ),
  entry(
    "water.flowPower",
    "W",
    "heat-capacity-water",
    "m c ΔT per second",
    {
      litresPerMinute: between(0, 1000),
      fromC: heating.fromC,
      toC: heating.toC,
      specificHeatKJkgK: heating.specificHeatKJkgK,
    },
    (a) => {
      mustWarm(a);
      return waterHeatKwh(a.litresPerMinute * 60, a.fromC, a.toC, a.specificHeatKJkgK) * 1000;
    },
  ),
  entry("water.density", "kg/m³", "tanaka-2001", "eq. 1", { temperatureC: between(0, 40) }, (a) =>
    waterDensityKgM3(a.temperatureC),
  ),
  entry(
    "water.headPressure",
    "Pa",
    "hydrostatics",
    "ρ g h",
    { headM: between(0, 1000), densityKgM3: above0(2000) },
    (a) => headPressurePa(a.headM, a.densityKgM3),
  ),
  entry(
    "water.showerUse",
    "L",
    "hydrostatics",
    "minutes × flow",
    { minutes: between(0, 600), litresPerMinute: between(0, 60) },
    (a) => a.minutes * a.litresPerMinute,
  ),
];
