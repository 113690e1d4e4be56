/** Fuel and diesel exhaust fluid (DEF). */
import * as z from "zod/mini";
import { above0, between } from "./args.ts";
import { entry } from "./entry.ts";

const MILE_KM = 1.609344;

/** Litres per 100 km from miles per gallon; imperial gallon 4.54609 L unless another is given. */
export function litresPer100Km(milesPerGallon: number, gallonL = 4.54609): number {
  return (100 * gallonL) / (milesPerGallon * MILE_KM);
}

/** Density at 15 to 20 °C, kg/m³. */
export const FUEL_DENSITY_KGM3 = { diesel: 837, def: 1090 } as const;
const GROSS_GJ_PER_T = { diesel: 45.6, lpg: 49.4 } as const;

export const FUEL_FORMULAS = [
  entry(
    "fuel.litresPer100km",
    "L/100 km",
    "volume-length",
    "imperial gallon",
    { milesPerImperialGallon: above0(10_000) },
    (a) => litresPer100Km(a.milesPerImperialGallon),
  ),
  entry(
    "fuel.litresPer100kmFromUsGallon",
    "L/100 km",
    "volume-length",
    "US gallon",
    { milesPerUsGallon: above0(10_000) },
    (a) => litresPer100Km(a.milesPerUsGallon, 3.785411784),
  ),
  entry(
    "fuel.density",
    "kg/m³",
    "fuel-data-sheet",
    "diesel; DEF the middle of ISO 22241-1",
    { fuel: z.enum(["diesel", "def"]) },
    (a) => FUEL_DENSITY_KGM3[a.fuel],
  ),
  entry("fuel.defLimits", "kg/m³, %, °C", "iso-22241", "requirements", {}, () => ({
    minimumKgM3: 1087,
    maximumKgM3: 1093,
    ureaPct: 32.5,
    minimumUreaPct: 31.8,
    maximumUreaPct: 33.2,
    freezesC: -11,
  })),
  entry(
    "fuel.grossEnergy",
    "GJ",
    "dukes",
    "table A.1",
    { fuel: z.enum(["diesel", "lpg"]), massKg: between(0, 1_000_000) },
    (a) => (GROSS_GJ_PER_T[a.fuel] * a.massKg) / 1000,
  ),
];
