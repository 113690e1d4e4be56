import { Temporal } from "../base/time.ts";
import { DAY_CURVE_MEAN, dayCurveShare } from "../formulas/air.ts";
import { nodesKeepingMeans, valueOnDay } from "./between-months.ts";
import { type DaySun, daySun, withinDay } from "./day-sun.ts";
import { drawDays, type WeatherDay } from "./draw-days.ts";
import { errorOf } from "./forecast-error.ts";
import { type ClimateNormal, climateYear } from "./normal.ts";
import type { DayPlace, TripWeather, WeatherNote, WeatherOptions } from "./trip-weather.ts";

/** A place counts as weakly known beyond this distance to its nearest station. */
const FAR_KM = 75;
/** clearness where no station near has one (polar night: nothing is lost by it) */
const NO_CLEARNESS = 0.3;

/** what was worked out for a place stays so: a trip is forecast again and again */
const MOST_KNOWN = 256;
const KNOWN_YEARS = new Map<string, PlaceYear>();

interface PlaceYear {
  readonly normals: readonly ClimateNormal[];
  readonly mean: readonly number[];
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly clearness: readonly number[];
}

/**
 * The weather of a trip, lived `runs` times: monthly normals at each day's place, a daily anomaly and
 * clearness drawn by key, the day's temperature curve, and the exact hourly split of its radiation.
 * The same days, runs and seed give the same weather. Throws RangeError on a date or number that cannot be.
 */
export function liveWeather(days: readonly DayPlace[], options: WeatherOptions): TripWeather {
  const { runs } = options;
  if (!Number.isInteger(runs) || runs < 1) throw new RangeError(`liveWeather: ${runs} runs`);
  const years = KNOWN_YEARS;
  if (years.size > MOST_KNOWN) years.clear();
  const dates = days.map(({ date }) => Temporal.PlainDate.from(date));
  const suns = days.map((day, at) => sunOfDay(day, dates[at]!));
  const drawn = drawDays(
    days.map((day, at) => weatherDay(day, dates[at]!, suns[at]!, placeYear(years, day))),
    options,
  );
  const shareBefore = rememberLast(suns);
  return {
    runs,
    notes: days.map((day, at) => ({
      ...note(at, placeYear(years, day).normals[month(day)]!),
      given: day.given !== undefined,
    })),
    fill: (day, clockH, dtH, outsideC, irradianceWm2) => {
      const sun = suns[day];
      if (sun === undefined) throw new RangeError(`weather: no day ${day} in a trip of ${days.length}`);
      const middle = clockH + dtH / 2;
      fillTemperature(
        drawn.meanC,
        drawn.rangeK,
        runs,
        day,
        middle,
        dayCurveShare(sun.solarHour(middle)) - DAY_CURVE_MEAN,
        outsideC,
      );
      const before = shareBefore(day, clockH);
      const share = (shareBefore(day, clockH + dtH) - before) / dtH;
      const start = day * runs;
      for (let i = 0; i < runs; i++) irradianceWm2[i] = drawn.irradiationWhm2[start + i]! * share;
    },
  };
}

/** The end of one step is the beginning of the next: its share of the day's radiation is worked out once. */
function rememberLast(suns: readonly DaySun[]): (day: number, clockH: number) => number {
  let lastDay = -1;
  let lastH = -1;
  let last = 0;
  return (day, clockH) => {
    if (day !== lastDay || clockH !== lastH) {
      last = suns[day]!.shareBefore(clockH);
      lastDay = day;
      lastH = clockH;
    }
    return last;
  };
}

/** Day means run in straight lines from noon to noon, so that nothing jumps at midnight; row 0 is the day before the trip. */
function fillTemperature(
  meanC: Float64Array,
  rangeK: Float64Array,
  runs: number,
  day: number,
  clockH: number,
  curve: number,
  outsideC: Float64Array,
): void {
  const first = (clockH < 12 ? day : day + 1) * runs;
  const late = withinDay(clockH + 12) / 24;
  const early = 1 - late;
  for (let i = 0; i < runs; i++) {
    const a = first + i;
    const b = a + runs;
    outsideC[i] = early * (meanC[a]! + rangeK[a]! * curve) + late * (meanC[b]! + rangeK[b]! * curve);
  }
}

const month = (day: DayPlace) => Number(day.date.slice(5, 7)) - 1;

function placeYear(years: Map<string, PlaceYear>, day: DayPlace): PlaceYear {
  const key = `${day.latitudeDeg},${day.longitudeDeg},${day.elevationM}`;
  const known = years.get(key);
  if (known !== undefined) return known;
  const normals = climateYear(day);
  const year = {
    normals,
    mean: nodesKeepingMeans(normals.map((normal) => normal.meanC)),
    low: nodesKeepingMeans(normals.map((normal) => normal.minC)),
    high: nodesKeepingMeans(normals.map((normal) => normal.maxC)),
    clearness: nodesKeepingMeans(normals.map((normal) => normal.clearness ?? NO_CLEARNESS)),
  };
  years.set(key, year);
  return year;
}

function sunOfDay(day: DayPlace, { dayOfYear }: Temporal.PlainDate): DaySun {
  return daySun(day.latitudeDeg, day.longitudeDeg, dayOfYear, day.utcOffsetH);
}

function weatherDay(
  day: DayPlace,
  date: Temporal.PlainDate,
  { extraterrestrialWhm2 }: DaySun,
  year: PlaceYear,
): WeatherDay {
  const on = (nodes: readonly number[]) => valueOnDay(nodes, date.dayOfYear, date.inLeapYear);
  const climate = {
    month: date.month - 1,
    meanC: on(year.mean),
    rangeK: Math.max(0, on(year.high) - on(year.low)),
    clearness: on(year.clearness),
    extraterrestrialWhm2,
    error: null,
  };
  const { given } = day;
  if (given === undefined) return climate;
  const hasSun = given.sunWhM2 !== null && extraterrestrialWhm2 > 0;
  return {
    ...climate,
    meanC: (given.minC + given.maxC) / 2,
    rangeK: given.maxC - given.minC,
    clearness: hasSun ? given.sunWhM2! / extraterrestrialWhm2 : climate.clearness,
    error: errorOf(given.leadDays, hasSun),
  };
}

function note(day: number, normal: ClimateNormal): Omit<WeatherNote, "given"> {
  const nearest = normal.stations[0]!;
  const fromMemoryShare = normal.stations.reduce(
    (sum, station) => sum + (station.fromMemory ? station.weight : 0),
    0,
  );
  return {
    day,
    nearestStation: nearest.name,
    distanceKm: nearest.distanceKm,
    fromMemoryShare,
    nearestFromMemory: nearest.fromMemory,
    weak: nearest.distanceKm > FAR_KM || fromMemoryShare > 0.5,
  };
}
