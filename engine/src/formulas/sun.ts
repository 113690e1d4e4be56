/**
 * Sun: daily geometry after FAO-56, position after Meeus. Angles in degrees, energies in MJ/m²/d.
 */
const RAD = Math.PI / 180;

/** Inverse relative distance Earth to Sun, 1 to 366 (FAO-56 eq. 23). */
export function inverseRelativeDistance(dayOfYear: number): number {
  return 1 + 0.033 * Math.cos((2 * Math.PI * dayOfYear) / 365);
}

/** Declination of the sun in radians (FAO-56 eq. 24). */
export function declinationRad(dayOfYear: number): number {
  return 0.409 * Math.sin((2 * Math.PI * dayOfYear) / 365 - 1.39);
}

/** Sunset hour angle in radians, 0 in polar night to π in polar day (FAO-56 eq. 25, argument held within ±1). */
export function sunsetAngleRad(latitudeRad: number, declination: number): number {
  return Math.acos(Math.max(-1, Math.min(1, -Math.tan(latitudeRad) * Math.tan(declination))));
}

/** Extraterrestrial radiation of a day on a horizontal surface, MJ/m²/d (FAO-56 eq. 21, solar constant 0.0820 MJ/m²/min). */
export function extraterrestrialDaily(latitudeDeg: number, dayOfYear: number): number {
  const latitude = latitudeDeg * RAD;
  const declination = declinationRad(dayOfYear);
  const sunset = sunsetAngleRad(latitude, declination);
  const geometry =
    sunset * Math.sin(latitude) * Math.sin(declination) +
    Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset);
  return Math.max(0, ((24 * 60) / Math.PI) * 0.082 * inverseRelativeDistance(dayOfYear) * geometry);
}

/** Daylight hours, sun's centre on a flat horizon (FAO-56 eq. 34). */
export function dayLength(latitudeDeg: number, dayOfYear: number): number {
  return (24 / Math.PI) * sunsetAngleRad(latitudeDeg * RAD, declinationRad(dayOfYear));
}

/** Equation of time in hours, clock minus mean sun, good to about a minute (FAO-56 eq. 32). */
export function equationOfTimeDailyH(dayOfYear: number): number {
  const b = (2 * Math.PI * (dayOfYear - 81)) / 364;
  return 0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b);
}

/** Declination by Cooper's equation, degrees. */
export function declinationCooper(dayOfYear: number): number {
  return 23.45 * Math.sin((360 * (284 + dayOfYear) * RAD) / 365);
}

/** Altitude of the sun from latitude, declination and hour angle, degrees. */
export function altitudeFromAngles(
  latitudeDeg: number,
  declinationDeg: number,
  hourAngleDeg: number,
): number {
  const [l, d, h] = [latitudeDeg * RAD, declinationDeg * RAD, hourAngleDeg * RAD];
  return (
    Math.asin(
      Math.max(-1, Math.min(1, Math.sin(l) * Math.sin(d) + Math.cos(l) * Math.cos(d) * Math.cos(h))),
    ) / RAD
  );
}

/** Clear-sky global horizontal irradiance, W/m² (Haurwitz); 0 with the sun at or below the horizon. */
export function clearSky(altitudeDeg: number): number {
  if (altitudeDeg <= 0) return 0;
  const cosZenith = Math.sin(altitudeDeg * RAD);
  return 1098 * cosZenith * Math.exp(-0.059 / cosZenith);
}

/** Radiation under cloud, W/m², from that of a clear sky and the share of the sky under cloud, 0 to 1 (Kasten & Czeplak). */
export function underCloud(clearWm2: number, cloudShare: number): number {
  return clearWm2 * (1 - 0.75 * cloudShare ** 3.4);
}

/** Share of the day's global radiation per hour at an hour angle (Collares-Pereira and Rabl); 0 outside the day. */
export function hourlyShare(hourAngleDeg: number, sunsetAngleDeg: number): number {
  const w = hourAngleDeg * RAD;
  const { a, b } = hourlyCoefficients(sunsetAngleDeg * RAD);
  return Math.max(0, a + b * Math.cos(w)) * hourlyShareDiffuse(hourAngleDeg, sunsetAngleDeg);
}

/** Share of the day's diffuse radiation per hour at an hour angle (Liu and Jordan); 0 outside the day. */
export function hourlyShareDiffuse(hourAngleDeg: number, sunsetAngleDeg: number): number {
  const [w, s] = [hourAngleDeg * RAD, sunsetAngleDeg * RAD];
  if (Math.abs(w) >= s) return 0;
  return ((Math.PI / 24) * (Math.cos(w) - Math.cos(s))) / (Math.sin(s) - s * Math.cos(s));
}

/** Coefficients of the hourly split for a sunset hour angle in radians. */
export function hourlyCoefficients(sunset: number): { readonly a: number; readonly b: number } {
  const s = Math.sin(sunset - Math.PI / 3);
  return { a: 0.409 + 0.5016 * s, b: 0.6609 - 0.4767 * s };
}

/** Rs = (0.25 + 0.50 n/N) Ra, the radiation of a day from its sunshine hours, MJ/m²/d (FAO-56 eq. 35). */
export function radiationFromSunshine(
  sunshineH: number,
  dayLengthH: number,
  extraterrestrialMJ: number,
): number {
  return (0.25 + (0.5 * sunshineH) / dayLengthH) * extraterrestrialMJ;
}

/** Rs = k √(Tmax − Tmin) Ra, MJ/m²/d (FAO-56 eq. 50); k 0.16 inland, 0.19 by the coast. */
export function radiationFromTemperature(
  minC: number,
  maxC: number,
  extraterrestrialMJ: number,
  coefficient: number,
): number {
  return coefficient * Math.sqrt(maxC - minC) * extraterrestrialMJ;
}
