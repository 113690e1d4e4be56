import * as z from "zod/mini";
import { BadInput } from "../base/bad-input.ts";
import { above0, between, lpgFuel, lpgTemperatureC } from "./args.ts";
import { entry } from "./entry.ts";
import {
  boilingPointC,
  drawOffKgH,
  LPG,
  latentHeatKJkg,
  liquidDensityKgM3,
  lpgEnergyKwh,
  vapourPressureBar,
} from "./lpg.ts";

const ANTOINE = {
  propane: { a: 4.53678, b: 1149.36, c: 24.906, minC: 4.45, maxC: 87.65 },
  butane: { a: 4.35576, b: 1175.581, c: -2.071, minC: -0.49, maxC: 151.85 },
} as const;

function antoineBar(fuel: "propane" | "butane", temperatureC: number): number {
  const { a, b, c, minC, maxC } = ANTOINE[fuel];
  if (temperatureC < minC || temperatureC > maxC) {
    throw new BadInput([
      {
        path: "temperatureC",
        expected: `expected ${minC} to ${maxC} °C for ${fuel} (use gas.vapourPressure in the cold)`,
      },
    ]);
  }
  return 10 ** (a - b / (temperatureC + 273.15 + c));
}

const state = { fuel: lpgFuel, temperatureC: lpgTemperatureC };

export const GAS_FORMULAS = [
  entry("gas.vapourPressure", "bar absolute", "lpg-equations", "saturation", state, (a) =>
    vapourPressureBar(a.fuel, a.temperatureC),
  ),
  entry("gas.liquidDensity", "kg/m³", "lpg-equations", "saturated liquid", state, (a) =>
    liquidDensityKgM3(a.fuel, a.temperatureC),
  ),
  entry("gas.latentHeat", "kJ/kg", "lpg-equations", "saturation", state, (a) =>
    latentHeatKJkg(a.fuel, a.temperatureC),
  ),
  entry(
    "gas.boilingPoint",
    "°C",
    "lpg-equations",
    "saturation",
    { fuel: lpgFuel, pressureBar: between(0.2, 16) },
    (a) => {
      const [low, high] = [vapourPressureBar(a.fuel, -50), vapourPressureBar(a.fuel, 65)];
      if (a.pressureBar >= low && a.pressureBar <= high) return boilingPointC(a.fuel, a.pressureBar);
      throw new BadInput([
        {
          path: "pressureBar",
          expected: `expected ${low.toFixed(3)} to ${high.toFixed(2)} bar for ${a.fuel}`,
        },
      ]);
    },
  ),
  entry(
    "gas.energy",
    "kWh",
    "moran-shapiro",
    "table A-25",
    { fuel: lpgFuel, massKg: between(0, 1_000_000), basis: z.enum(["gross", "net"]) },
    (a) => lpgEnergyKwh(a.fuel, a.massKg, a.basis),
  ),
  entry(
    "gas.vapourPressureAntoine",
    "bar absolute",
    "nist-antoine",
    "log10 p = A − B/(T + C)",
    { fuel: lpgFuel, temperatureC: between(-1, 152) },
    (a) => antoineBar(a.fuel, a.temperatureC),
  ),
  entry(
    "gas.relativeVapourDensity",
    "–",
    "lpg-equations",
    "15 °C, 1 atm, air 1.225 kg/m³",
    { fuel: lpgFuel },
    (a) => LPG[a.fuel].gasKgM3 / 1.225,
  ),
  entry("gas.flammableLimits", "% vol", "gas-limits", "in air", { fuel: lpgFuel }, (a) => {
    const [lowerPct, upperPct] = LPG[a.fuel].flammablePct;
    return { lowerPct, upperPct };
  }),
  entry(
    "gas.fillingRatio",
    "kg/L",
    "un-p200",
    "0.95 × liquid density at 50 °C",
    { fuel: lpgFuel },
    (a) => (0.95 * liquidDensityKgM3(a.fuel, 50)) / 1000,
  ),
  entry(
    "gas.fillAtTemperature",
    "%",
    "lpg-equations",
    "mass of liquid kept",
    { fuel: lpgFuel, fillPct: between(0, 100), filledAtC: lpgTemperatureC, temperatureC: lpgTemperatureC },
    (a) => (a.fillPct * liquidDensityKgM3(a.fuel, a.filledAtC)) / liquidDensityKgM3(a.fuel, a.temperatureC),
  ),
  entry(
    "gas.maximumFill",
    "same as capacity",
    "cfr-1910-110",
    "V = D / (G F)",
    {
      capacity: above0(1e9),
      fillingDensityPct: above0(100),
      specificGravity: between(0.4, 0.7),
      volumeCorrection: between(0.8, 1.3),
    },
    (a) => (a.capacity * a.fillingDensityPct) / 100 / (a.specificGravity * a.volumeCorrection),
  ),
  entry(
    "gas.drawOff",
    "kg/h",
    "heat-balance",
    "U A ΔT / latent heat",
    {
      fuel: lpgFuel,
      outsideC: lpgTemperatureC,
      wettedAreaM2: between(0, 20),
      transferWm2K: between(1, 50),
      minimumPressureBar: between(1, 10),
    },
    (a) => drawOffKgH(a.fuel, a.outsideC, a.wettedAreaM2, a.transferWm2K, a.minimumPressureBar),
  ),
];
