/** The 230 V supply. */
import * as z from "zod/mini";
import { above0, between } from "./args.ts";
import { entry } from "./entry.ts";

/** Current of a resistive load, A. */
export function mainsCurrentA(powerW: number, volts: number): number {
  return powerW / volts;
}

/** Area of a hook-up lead by the rating of its connectors, mm² (table 721). */
const LEAD_AREA_MM2: Readonly<Record<number, number>> = { 16: 2.5, 32: 6, 63: 16 };

export const MAINS_FORMULAS = [
  entry(
    "mains.current",
    "A",
    "electric-power",
    "I = P/U",
    { powerW: between(0, 1_000_000), volts: above0(1000) },
    (a) => mainsCurrentA(a.powerW, a.volts),
  ),
  entry(
    "mains.power",
    "W",
    "electric-power",
    "P = U I",
    { currentA: between(0, 10_000), volts: above0(1000) },
    (a) => a.currentA * a.volts,
  ),
  entry(
    "mains.leadArea",
    "mm²",
    "bs-7671-721",
    "table 721",
    { ratingA: z.literal([16, 32, 63]) },
    (a) => LEAD_AREA_MM2[a.ratingA]!,
  ),
];
