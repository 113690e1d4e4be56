/** Batteries: Peukert's law for a capacity given at an hour rate, rest voltage, cold. */
import { BadInput } from "../base/bad-input.ts";
import { above0, between } from "./args.ts";
import { entry } from "./entry.ts";
import { interpolate } from "./interpolate.ts";

/** Hours that a battery rated `ratedAh` at `ratedHours` lasts at a steady current: t = H (C / I H)^k. */
export function runTimeH(ratedAh: number, ratedHours: number, peukert: number, currentA: number): number {
  return ratedHours * (ratedAh / (currentA * ratedHours)) ** peukert;
}

/** The same in the form T = C (C/R)^(k−1) / I^k. */
export function runTimeOtherFormH(
  ratedAh: number,
  ratedHours: number,
  peukert: number,
  currentA: number,
): number {
  return (ratedAh * (ratedAh / ratedHours) ** (peukert - 1)) / currentA ** peukert;
}

/** Peukert's exponent from two ratings of one battery. */
export function peukertExponent(
  firstAh: number,
  firstHours: number,
  secondAh: number,
  secondHours: number,
): number {
  return Math.log(secondHours / firstHours) / Math.log(firstAh / firstHours / (secondAh / secondHours));
}

const REST_VOLTS = [
  [10, 11.72],
  [20, 11.88],
  [30, 12.02],
  [40, 12.12],
  [50, 12.2],
  [60, 12.28],
  [70, 12.36],
  [80, 12.46],
  [90, 12.58],
  [100, 12.7],
] as const;

/** Rest voltage of a flooded 12 V battery at 25 °C by its charge in %, 10 to 100; sources differ by 0.1 V. */
export function restVoltageV(chargePct: number): number {
  return interpolate(REST_VOLTS, chargePct);
}

const LEAD_ACID_COLD_PCT = [
  [-20, -42],
  [0, -16],
  [5, -12],
  [10, -10],
  [15, -6],
  [20, -1],
  [25, 0],
  [30, 3],
] as const;

/**
 * Change of a lead-acid battery's capacity by temperature, % of that at 25 °C, for discharges over an hour;
 * read from 0 to 30 °C, below that carried on to −20 °C from memory.
 */
export function leadAcidCapacityChangePct(temperatureC: number): number {
  return interpolate(LEAD_ACID_COLD_PCT, temperatureC);
}

const rating = {
  ratedAh: above0(100_000),
  ratedHours: above0(1000),
  peukert: between(1, 2),
  currentA: above0(100_000),
};

export const BATTERY_FORMULAS = [
  entry("battery.runTime", "h", "peukert", "hour-rated form", rating, (a) =>
    runTimeH(a.ratedAh, a.ratedHours, a.peukert, a.currentA),
  ),
  entry("battery.runTimeOtherForm", "h", "peukert", "C (C/R)^(k−1) / I^k", rating, (a) =>
    runTimeOtherFormH(a.ratedAh, a.ratedHours, a.peukert, a.currentA),
  ),
  entry(
    "battery.peukert",
    "–",
    "peukert",
    "exponent from two ratings",
    {
      firstAh: above0(100_000),
      firstHours: above0(1000),
      secondAh: above0(100_000),
      secondHours: above0(1000),
    },
    (a) => {
      const exponent = peukertExponent(a.firstAh, a.firstHours, a.secondAh, a.secondHours);
      if (Number.isFinite(exponent) && exponent >= 1) return exponent;
      throw new BadInput([
        {
          path: "secondHours",
          expected: "expected a second rating at another rate, with less capacity at the faster rate",
        },
      ]);
    },
  ),
  entry(
    "battery.restVoltage",
    "V",
    "road-sign-manual",
    "p. 42, 25 °C, flooded",
    { chargePct: between(10, 100) },
    (a) => restVoltageV(a.chargePct),
  ),
  entry(
    "battery.leadAcidCapacityChange",
    "%",
    "lead-acid-cold",
    "discharge over 60 min",
    { temperatureC: between(-20, 30) },
    (a) => leadAcidCapacityChangePct(a.temperatureC),
  ),
];
