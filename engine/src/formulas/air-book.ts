import * as z from "zod/mini";
import * as air from "./air.ts";
import { above0, between } from "./args.ts";
import { entry } from "./entry.ts";

/** limits of exposure, ppm, by minutes (WHO 2000) */
const WHO_2000_PPM: Readonly<Record<number, number>> = { 15: 90, 30: 50, 60: 25, 480: 10 };
const airC = between(-60, 60);
const pct = between(0, 100);

export const AIR_FORMULAS = [
  entry("air.saturationPressure", "kPa", "fao-56", "eq. 11", { airC: between(-60, 100) }, (a) =>
    air.saturationPressureKPa(a.airC),
  ),
  entry(
    "air.dewPoint",
    "°C",
    "wmo-8",
    "Magnus over water, 17.62 and 243.12 °C",
    { airC, humidityPct: above0(100) },
    (a) => air.dewPointC(a.airC, a.humidityPct),
  ),
  entry("air.pressure", "kPa", "fao-56", "eq. 7", { elevationM: between(-500, 9000) }, (a) =>
    air.airPressureKPa(a.elevationM),
  ),
  entry(
    "air.vapourPressureFromHumidity",
    "kPa",
    "fao-56",
    "eq. 17",
    { minC: airC, maxC: airC, minHumidityPct: pct, maxHumidityPct: pct },
    (a) => air.vapourPressureFromHumidityKPa(a.minC, a.maxC, a.minHumidityPct, a.maxHumidityPct),
  ),
  entry(
    "air.vapourPressureFromPsychrometer",
    "kPa",
    "fao-56",
    "eq. 15, 16",
    { wetC: airC, dryC: airC, pressureKPa: between(30, 110), coefficientPerK: between(0.0005, 0.0013) },
    (a) => air.vapourPressureFromPsychrometerKPa(a.wetC, a.dryC, a.pressureKPa, a.coefficientPerK),
  ),
  entry("air.dayCurveShare", "–", "campbell-norman-1998", "eq. 2.2", { solarHour: between(0, 24) }, (a) =>
    air.dayCurveShare(a.solarHour),
  ),
  entry(
    "air.carbonMonoxidePpm",
    "ppm",
    "molar-volume",
    "24.45/28.01",
    { milligramsPerM3: between(0, 100_000) },
    (a) => air.carbonMonoxidePpm(a.milligramsPerM3),
  ),
  entry(
    "air.carbonMonoxideAlarm",
    "min",
    "en-50291",
    "alarm times",
    { ppm: z.literal([30, 50, 100, 300]) },
    (a) => ({
      ...air.CO_ALARM_TIMES[a.ppm]!,
    }),
  ),
  entry(
    "air.carbonMonoxideLimit",
    "ppm",
    "who-air-2000",
    "table of CO limits",
    { minutes: z.literal([15, 30, 60, 480]) },
    (a) => WHO_2000_PPM[a.minutes]!,
  ),
];
