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

/** How a day's radiation is shared out over its clock hours. */
export interface DaySun {
  /** extraterrestrial irradiation of the day on a horizontal surface, Wh/m² */
  readonly extraterrestrialWhm2: number;
  /** share of the day's radiation that falls before a clock hour; exact integral of the hourly split, renormalised to 1 */
  shareBefore(clockH: number): number;
  /** solar time of a clock hour, h */
  solarHour(clockH: number): number;
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
  // antiderivative of (a + b cos ω)(cos ω − cos ωs); odd in ω
  const area = (w: number) =>
    (a - b * cosSunset) * Math.sin(w) - a * cosSunset * w + b * (w / 2 + Math.sin(2 * w) / 4);
  const half = area(sunset);
  const shiftH = longitudeDeg / 15 - utcOffsetH + equationOfTimeDailyH(dayOfYear);
  return {
    extraterrestrialWhm2: (extraterrestrialDaily(latitudeDeg, dayOfYear) * SOLAR_CONSTANT_RATIO * 1e6) / 3600,
    shareBefore: (clockH) => {
      const w = (clockH + shiftH - 12) * 15 * RAD;
      const turns = Math.floor((w + Math.PI) / (2 * Math.PI));
      if (!(half > 0)) return turns;
      const within = w - turns * 2 * Math.PI;
      // before sunrise nothing has come, after sunset all
      if (within <= -sunset) return turns;
      if (within >= sunset) return turns + 1;
      return turns + (area(within) + half) / (2 * half);
    },
    solarHour: (clockH) => withinDay(clockH + shiftH),
  };
}
