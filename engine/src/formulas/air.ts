/** Air: moisture, pressure, the temperature through the day, carbon monoxide. */

/** Saturation vapour pressure over water, kPa (FAO-56 eq. 11). */
export function saturationPressureKPa(airC: number): number {
  return 0.6108 * Math.exp((17.27 * airC) / (airC + 237.3));
}

/** Dew point in °C from air temperature and relative humidity in % above 0 (Magnus, 17.62 and 243.12 °C). */
export function dewPointC(airC: number, humidityPct: number): number {
  const gamma = (17.62 * airC) / (243.12 + airC) + Math.log(humidityPct / 100);
  return (243.12 * gamma) / (17.62 - gamma);
}

/** Standard air pressure at an elevation, kPa (FAO-56 eq. 7). */
export function airPressureKPa(elevationM: number): number {
  return 101.3 * ((293 - 0.0065 * elevationM) / 293) ** 5.26;
}

/** Actual vapour pressure from the day's extremes, kPa (FAO-56 eq. 17). */
export function vapourPressureFromHumidityKPa(
  minC: number,
  maxC: number,
  minPct: number,
  maxPct: number,
): number {
  return (saturationPressureKPa(minC) * maxPct + saturationPressureKPa(maxC) * minPct) / 200;
}

/** Actual vapour pressure from a psychrometer, kPa (FAO-56 eq. 15 and 16). */
export function vapourPressureFromPsychrometerKPa(
  wetC: number,
  dryC: number,
  pressureKPa: number,
  coefficient: number,
): number {
  return saturationPressureKPa(wetC) - coefficient * pressureKPa * (dryC - wetC);
}

/** Share of the way from the day's minimum to its maximum at a solar hour (Campbell and Norman eq. 2.2); its mean is 0.44. */
export function dayCurveShare(solarHour: number): number {
  const w = (Math.PI * solarHour) / 12;
  return 0.44 - 0.46 * Math.sin(w + 0.9) + 0.11 * Math.sin(2 * w + 0.9);
}
/** Mean of {@link dayCurveShare} over the day. */
export const DAY_CURVE_MEAN = 0.44;

/** Carbon monoxide from mg/m³ to parts per million at 25 °C. */
export function carbonMonoxidePpm(milligramsPerM3: number): number {
  return (milligramsPerM3 * 24.45) / 28.01;
}

/** Minutes between which an alarm after EN 50291 must sound at 30, 50, 100 or 300 ppm; null where open. */
export const CO_ALARM_TIMES: Readonly<
  Record<number, { readonly notBeforeMin: number; readonly beforeMin: number | null }>
> = {
  30: { notBeforeMin: 120, beforeMin: null },
  50: { notBeforeMin: 60, beforeMin: 90 },
  100: { notBeforeMin: 10, beforeMin: 40 },
  300: { notBeforeMin: 0, beforeMin: 3 },
};
