/** Apparent place of the sun after Meeus (chapters 12, 22, 25, 28), good to about 0.01° from 1900 to 2100. */
import { Temporal } from "../base/time.ts";

const RAD = Math.PI / 180;
const turn = (degrees: number) => ((degrees % 360) + 360) % 360;

interface ApparentSun {
  readonly declinationDeg: number;
  readonly rightAscensionDeg: number;
  /** apparent minus mean solar time, min */
  readonly equationOfTimeMin: number;
}

/** Apparent declination, right ascension and equation of time at Julian centuries from J2000 (dynamical time). */
export function apparentSun(century: number): ApparentSun {
  const t = century;
  const meanLongitude = turn(280.46646 + t * (36000.76983 + 0.0003032 * t));
  const anomaly = (357.52911 + t * (35999.05029 - 0.0001537 * t)) * RAD;
  const eccentricity = 0.016708634 - t * (0.000042037 + 0.0000001267 * t);
  const centre =
    Math.sin(anomaly) * (1.914602 - t * (0.004817 + 0.000014 * t)) +
    Math.sin(2 * anomaly) * (0.019993 - 0.000101 * t) +
    Math.sin(3 * anomaly) * 0.000289;
  const node = (125.04 - 1934.136 * t) * RAD;
  const longitude = (meanLongitude + centre - 0.00569 - 0.00478 * Math.sin(node)) * RAD;
  const obliquity =
    (23 +
      (26 + (21.448 - t * (46.815 + t * (0.00059 - 0.001813 * t))) / 60) / 60 +
      0.00256 * Math.cos(node)) *
    RAD;
  return {
    declinationDeg: Math.asin(Math.sin(obliquity) * Math.sin(longitude)) / RAD,
    rightAscensionDeg: turn(Math.atan2(Math.cos(obliquity) * Math.sin(longitude), Math.cos(longitude)) / RAD),
    equationOfTimeMin: equationOfTime(meanLongitude * RAD, anomaly, eccentricity, obliquity),
  };
}

function equationOfTime(longitude: number, anomaly: number, e: number, obliquity: number): number {
  const y = Math.tan(obliquity / 2) ** 2;
  const radians =
    y * Math.sin(2 * longitude) -
    2 * e * Math.sin(anomaly) +
    4 * e * y * Math.sin(anomaly) * Math.cos(2 * longitude) -
    0.5 * y * y * Math.sin(4 * longitude) -
    1.25 * e * e * Math.sin(2 * anomaly);
  return (4 * radians) / RAD;
}

/** Julian centuries of dynamical time from J2000; 69 s from universal time, right to 20 s from 1990 to 2050. */
export function julianCentury(epochMs: number): number {
  return (epochMs / 86_400_000 + 2440587.5 + 69 / 86400 - 2451545) / 36525;
}

/** Hour angle in degrees, −180 to 180, west positive, and declination, seen from a longitude at an instant. */
export function hourAngleAndDeclination(
  longitudeDeg: number,
  epochMs: number,
): { hourAngleDeg: number; declinationDeg: number } {
  const sun = apparentSun(julianCentury(epochMs));
  const hoursUtc = (epochMs / 3_600_000) % 24;
  const hourAngleDeg = turn(15 * hoursUtc + sun.equationOfTimeMin / 4 + longitudeDeg) - 180;
  return { hourAngleDeg, declinationDeg: sun.declinationDeg };
}

/** True (geometric) topocentric altitude, no refraction, and azimuth from north through east, degrees. */
export function sunPosition(
  latitudeDeg: number,
  longitudeDeg: number,
  epochMs: number,
): { readonly altitudeDeg: number; readonly azimuthDeg: number } {
  const { hourAngleDeg, declinationDeg } = hourAngleAndDeclination(longitudeDeg, epochMs);
  const [l, d, h] = [latitudeDeg * RAD, declinationDeg * RAD, hourAngleDeg * RAD];
  const sine = Math.sin(l) * Math.sin(d) + Math.cos(l) * Math.cos(d) * Math.cos(h);
  const altitude = Math.asin(Math.max(-1, Math.min(1, sine)));
  const azimuth = Math.atan2(
    -Math.cos(d) * Math.sin(h),
    Math.sin(d) * Math.cos(l) - Math.cos(d) * Math.sin(l) * Math.cos(h),
  );
  // 8.794 arc seconds of parallax lower the sun as seen from the ground
  return {
    altitudeDeg: altitude / RAD - (8.794 / 3600) * Math.cos(altitude),
    azimuthDeg: turn(azimuth / RAD),
  };
}

/** Upper limb on a flat horizon with the usual 34′ of refraction and 16′ of radius. */
const RISE_ALTITUDE_DEG = -0.8333;

/**
 * Epoch milliseconds of the transit nearest to civil noon of the date in the zone, and of the rise before and the
 * set after it; null where the sun does not cross the horizon (`polar` says whether it stays up or down).
 */
export function sunRiseSet(latitudeDeg: number, longitudeDeg: number, date: string, timeZone: string) {
  const noon = Temporal.PlainDate.from(date)
    .toPlainDateTime("12:00")
    .toZonedDateTime(timeZone).epochMilliseconds;
  const transit = settle(noon, (at) => at - hourAngleAndDeclination(longitudeDeg, at).hourAngleDeg * 240_000);
  const crossing = (sign: 1 | -1): number | null => {
    let angle = horizonAngle(latitudeDeg, hourAngleAndDeclination(longitudeDeg, transit).declinationDeg);
    let at = transit;
    for (let k = 0; k < 6; k++) {
      if (angle === null) return null;
      at = transit + sign * angle * 240_000;
      const sun = hourAngleAndDeclination(longitudeDeg, at);
      const drift = sun.hourAngleDeg - sign * angle;
      at -= (drift - 360 * Math.round(drift / 360)) * 240_000;
      angle = horizonAngle(latitudeDeg, hourAngleAndDeclination(longitudeDeg, at).declinationDeg);
    }
    return at;
  };
  const [sunrise, sunset] = [crossing(-1), crossing(1)];
  const up = sunPosition(latitudeDeg, longitudeDeg, transit).altitudeDeg > RISE_ALTITUDE_DEG;
  return {
    sunrise,
    transit,
    sunset,
    polar: sunrise === null && sunset === null ? (up ? "day" : "night") : null,
  } as const;
}

function settle(start: number, next: (at: number) => number): number {
  let at = start;
  for (let k = 0; k < 4; k++) at = next(at);
  return at;
}

function horizonAngle(latitudeDeg: number, declinationDeg: number): number | null {
  const [l, d] = [latitudeDeg * RAD, declinationDeg * RAD];
  const cosine =
    (Math.sin(RISE_ALTITUDE_DEG * RAD) - Math.sin(l) * Math.sin(d)) / (Math.cos(l) * Math.cos(d));
  return Math.abs(cosine) > 1 ? null : Math.acos(cosine) / RAD;
}
