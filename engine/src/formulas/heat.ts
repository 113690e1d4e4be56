/** Steady heat loss of a body. */
import * as z from "zod/mini";
import { above0, between } from "./args.ts";
import { entry } from "./entry.ts";

export interface WallLayer {
  readonly thicknessM: number;
  readonly conductivityWmK: number;
}

/** U-value of a layered wall, W/m²K; surface resistances in m²K/W (ISO 6946). */
export function uValue(layers: readonly WallLayer[], insideM2KW: number, outsideM2KW: number): number {
  const layersM2KW = layers.reduce((sum, layer) => sum + layer.thicknessM / layer.conductivityWmK, 0);
  return 1 / (insideM2KW + layersM2KW + outsideM2KW);
}

/** Heat lost with the air that changes, W: 0.33 Wh/m³K times air changes, volume and difference. */
export function ventilationLossW(airChangesPerHour: number, volumeM3: number, differenceK: number): number {
  return 0.33 * airChangesPerHour * volumeM3 * differenceK;
}

/** Surface resistances of ISO 6946 table 7 by direction of the heat flow, m²K/W. */
export const SURFACE_RESISTANCE_M2KW = { up: 0.1, horizontal: 0.13, down: 0.17, outside: 0.04 } as const;

/** Energy for a conductance over a sum of kelvin-days, kWh. */
export function degreeDayEnergyKwh(lossWK: number, kelvinDays: number): number {
  return (lossWK * kelvinDays * 24) / 1000;
}

const layer = z.strictObject({ thicknessM: between(0, 5), conductivityWmK: above0(500) });

export const HEAT_FORMULAS = [
  entry(
    "heat.uValue",
    "W/m²K",
    "iso-6946",
    "6.7",
    {
      layers: z.array(layer).check(z.minLength(1), z.maxLength(50)),
      insideM2KW: above0(5),
      outsideM2KW: between(0, 5),
    },
    (a) => uValue(a.layers, a.insideM2KW, a.outsideM2KW),
  ),
  entry(
    "heat.ventilationLoss",
    "W",
    "ventilation-heat",
    "0.33 n V ΔT",
    { airChangesPerHour: between(0, 1000), volumeM3: between(0, 100_000), differenceK: between(-100, 100) },
    (a) => ventilationLossW(a.airChangesPerHour, a.volumeM3, a.differenceK),
  ),
  entry(
    "heat.surfaceResistance",
    "m²K/W",
    "iso-6946",
    "table 7",
    { direction: z.enum(["up", "horizontal", "down", "outside"]) },
    (a) => SURFACE_RESISTANCE_M2KW[a.direction],
  ),
  entry(
    "heat.degreeDayEnergy",
    "kWh",
    "ventilation-heat",
    "conductance × degree days × 24 h",
    { lossWK: between(0, 100_000), kelvinDays: between(0, 20_000) },
    (a) => degreeDayEnergyKwh(a.lossWK, a.kelvinDays),
  ),
];
