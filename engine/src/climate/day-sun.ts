import {
  declinationRad,
  equationOfTimeDailyH,
  extraterrestrialDaily,
  hourlyCoefficients,
  sunsetAngleRad,
} from "../formulas/sun.ts";

const RAD = Math.PI / 180;
/** FAO-56 works with 1367 W/m²; the project's normals with 1361 W/m² */
const SOLAR_CONSTANT_RATIO = 1361 / 1367;

/** The sun of one day at a place, and how the day's radiation is shared out over its clock hours. */
export interface DaySun {
  /** extraterrestrial irradiation of the day on a horizontal surface, Wh/m² */
  readonly extraterrestrialWhm2: number;
  /** solar time less clock time, h */
  readonly shiftH: number;
  /** hour angle of sunset, rad, and its cosine */
  readonly sunset: number;
  readonly cosSunset: number;
  /** coefficients of the hourly split */
  readonly a: number;
  readonly b: number;
  /** the split summed from noon to sunset; 0 in polar night */
  readonly half: number;
}

/** Hours as a time of the day, 0 to 24. No remainder is taken: that is slow, and this is asked at every step. */
export function withinDay(hours: number): number {
  return hours - 24 * Math.floor(hours / 24);
}

/** The sun of one day at a place; `utcOffsetH` is civil time minus UTC. */
export function daySun(
  latitudeDeg: number,
  longitudeDeg: number,
  dayOfYear: number,
  utcOffsetH: number,
): DaySun {
  const sunset = sunsetAngleRad(latitudeDeg * RAD, declinationRad(dayOfYear));
  const { a, b } = hourlyCoefficients(sunset);
  const cosSunset = Math.cos(sunset);
  return {
    extraterrestrialWhm2: (extraterrestrialDaily(latitudeDeg, dayOfYear) * SOLAR_CONSTANT_RATIO * 1e6) / 3600,
    shiftH: longitudeDeg / 15 - utcOffsetH + equationOfTimeDailyH(dayOfYear),
    sunset,
    cosSunset,
    a,
    b,
    half: splitArea(a, b, cosSunset, sunset),
  };
}

/** Antiderivative of the hourly split (a + b cos ω)(cos ω − cos ωs); odd in ω. */
function splitArea(a: number, b: number, cosSunset: number, w: number): number {
  return (a - b * cosSunset) * Math.sin(w) - a * cosSunset * w + b * (w / 2 + Math.sin(2 * w) / 4);
}

/** Solar time at a clock hour, 0 to 24 h. */
export function solarHour({ shiftH }: DaySun, clockH: number): number {
  return withinDay(clockH + shiftH);
}

/** Share of the day's radiation that falls before a clock hour; exact integral of the hourly split, renormalised to 1. */
export function shareBefore({ shiftH, sunset, cosSunset, a, b, half }: DaySun, clockH: number): number {
  const w = (clockH + shiftH - 12) * 15 * RAD;
  const turns = Math.floor((w + Math.PI) / (2 * Math.PI));
  if (!(half > 0)) return turns;
  const within = w - turns * 2 * Math.PI;
  // before sunrise nothing has come, after sunset all
  if (within <= -sunset) return turns;
  if (within >= sunset) return turns + 1;
  return turns + (splitArea(a, b, cosSunset, within) + half) / (2 * half);
}
