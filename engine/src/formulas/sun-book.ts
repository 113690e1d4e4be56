import * as z from "zod/mini";
import { BadInput } from "../base/bad-input.ts";
import { Temporal } from "../base/time.ts";
import { above0, between, dayOfYear, latitudeDeg, longitudeDeg } from "./args.ts";
import { entry } from "./entry.ts";
import * as sun from "./sun.ts";
import { apparentSun, julianCentury, sunPosition, sunRiseSet } from "./sun-position.ts";

const RAD = Math.PI / 180;

/** Reads an argument with a Temporal parser; its refusal names the field. */
function read<T>(field: string, expected: string, parse: () => T): T {
  try {
    return parse();
  } catch {
    throw new BadInput([{ path: field, expected }]);
  }
}

const instantMs = (text: string): number => {
  const instant = read("instant", "expected an instant with its offset, such as 2026-06-21T12:00:00Z", () =>
    Temporal.Instant.from(text),
  );
  const year = instant.toZonedDateTimeISO("UTC").year;
  if (year < 1900 || year > 2100)
    throw new BadInput([{ path: "instant", expected: "expected a year from 1900 to 2100" }]);
  return instant.epochMilliseconds;
};

function riseSet(args: { latitudeDeg: number; longitudeDeg: number; date: string; timeZone: string }) {
  const zone = args.timeZone;
  read("timeZone", "expected a time zone such as Europe/London", () =>
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(zone),
  );
  const date = read("date", "expected a date YYYY-MM-DD", () => Temporal.PlainDate.from(args.date));
  if (date.year < 1900 || date.year > 2100)
    throw new BadInput([{ path: "date", expected: "expected a year from 1900 to 2100" }]);
  const { sunrise, transit, sunset, polar } = sunRiseSet(
    args.latitudeDeg,
    args.longitudeDeg,
    date.toString(),
    zone,
  );
  const iso = (ms: number | null) =>
    ms === null
      ? null
      : Temporal.Instant.fromEpochMilliseconds(Math.round(ms / 1000) * 1000)
          .toZonedDateTimeISO(zone)
          .toString({ timeZoneName: "never", smallestUnit: "second" });
  const times = { sunrise: iso(sunrise), transit: iso(transit), sunset: iso(sunset) };
  return polar === null ? times : { ...times, polar };
}

const day = { latitudeDeg, dayOfYear };

export const SUN_FORMULAS = [
  entry("sun.extraterrestrialDaily", "MJ/m²/d", "fao-56", "eq. 21", day, (a) =>
    sun.extraterrestrialDaily(a.latitudeDeg, a.dayOfYear),
  ),
  entry("sun.dayLength", "h", "fao-56", "eq. 34", day, (a) => sun.dayLength(a.latitudeDeg, a.dayOfYear)),
  entry("sun.inverseRelativeDistance", "–", "fao-56", "eq. 23", { dayOfYear }, (a) =>
    sun.inverseRelativeDistance(a.dayOfYear),
  ),
  entry("sun.declination", "rad", "fao-56", "eq. 24", { dayOfYear }, (a) => sun.declinationRad(a.dayOfYear)),
  entry("sun.sunsetHourAngle", "rad", "fao-56", "eq. 25", day, (a) =>
    sun.sunsetAngleRad(a.latitudeDeg * RAD, sun.declinationRad(a.dayOfYear)),
  ),
  entry(
    "sun.radiationFromSunshine",
    "MJ/m²/d",
    "fao-56",
    "eq. 35",
    { sunshineH: between(0, 24), dayLengthH: above0(24), extraterrestrialMJm2d: between(0, 50) },
    (a) => sun.radiationFromSunshine(a.sunshineH, a.dayLengthH, a.extraterrestrialMJm2d),
  ),
  entry(
    "sun.radiationFromTemperature",
    "MJ/m²/d",
    "fao-56",
    "eq. 50",
    {
      minC: between(-60, 60),
      maxC: between(-60, 60),
      extraterrestrialMJm2d: between(0, 50),
      coefficient: between(0.1, 0.25),
    },
    (a) => {
      if (a.maxC < a.minC)
        throw new BadInput([{ path: "maxC", expected: `expected at least minC (${a.minC})` }]);
      return sun.radiationFromTemperature(a.minC, a.maxC, a.extraterrestrialMJm2d, a.coefficient);
    },
  ),
  entry("sun.declinationCooper", "°", "duffie-beckman", "eq. 1.6.1", { dayOfYear }, (a) =>
    sun.declinationCooper(a.dayOfYear),
  ),
  entry(
    "sun.altitudeFromAngles",
    "°",
    "kalogirou",
    "eq. 2.12",
    { latitudeDeg, declinationDeg: between(-24, 24), hourAngleDeg: between(-180, 180) },
    (a) => sun.altitudeFromAngles(a.latitudeDeg, a.declinationDeg, a.hourAngleDeg),
  ),
  entry(
    "sun.dayLengthFromDeclination",
    "h",
    "kalogirou",
    "eq. 2.17",
    { latitudeDeg, declinationDeg: between(-24, 24) },
    (a) => (24 / Math.PI) * sun.sunsetAngleRad(a.latitudeDeg * RAD, a.declinationDeg * RAD),
  ),
  entry(
    "sun.equationOfTime",
    "min",
    "meeus-1998",
    "ch. 28",
    { instant: z.string() },
    (a) => apparentSun(julianCentury(instantMs(a.instant))).equationOfTimeMin,
  ),
  entry(
    "sun.apparentDeclination",
    "°",
    "meeus-1998",
    "ch. 25",
    { instant: z.string() },
    (a) => apparentSun(julianCentury(instantMs(a.instant))).declinationDeg,
  ),
  entry(
    "sun.position",
    "°",
    "meeus-1998",
    "ch. 13, 25",
    { latitudeDeg, longitudeDeg, instant: z.string() },
    (a) => ({
      ...sunPosition(a.latitudeDeg, a.longitudeDeg, instantMs(a.instant)),
    }),
  ),
  entry(
    "sun.riseSet",
    "ISO 8601",
    "meeus-1998",
    "ch. 15; upper limb, 34′ of refraction",
    { latitudeDeg, longitudeDeg, date: z.string(), timeZone: z.string() },
    riseSet,
  ),
  entry(
    "sun.clearSky",
    "W/m²",
    "haurwitz-1945",
    "1098 cosZ exp(−0.059/cosZ)",
    { altitudeDeg: between(-90, 90) },
    (a) => sun.clearSky(a.altitudeDeg),
  ),
  entry(
    "sun.underCloud",
    "W/m²",
    "kasten-czeplak-1980",
    "G/G0 = 1 − 0.75 (N/8)^3.4",
    { clearWm2: between(0, 1500), cloudShare: between(0, 1) },
    (a) => sun.underCloud(a.clearWm2, a.cloudShare),
  ),
  entry(
    "sun.hourlyShare",
    "–",
    "collares-pereira-rabl-1979",
    "rt",
    { hourAngleDeg: between(-180, 180), sunsetAngleDeg: above0(180) },
    (a) => sun.hourlyShare(a.hourAngleDeg, a.sunsetAngleDeg),
  ),
  entry(
    "sun.hourlyShareDiffuse",
    "–",
    "liu-jordan-1960",
    "rd",
    { hourAngleDeg: between(-180, 180), sunsetAngleDeg: above0(180) },
    (a) => sun.hourlyShareDiffuse(a.hourAngleDeg, a.sunsetAngleDeg),
  ),
];
