import { type DayParts, partsOf } from "../base/day-parts.ts";
import { DAY_CURVE_MEAN, dayCurveShare } from "../formulas/air.ts";
import { nodesKeepingMeans, valueOnDay } from "./between-months.ts";
import { type DaySun, daySun, shareBefore, solarHour, withinDay } from "./day-sun.ts";
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
  const dates = days.map(({ date }) => partsOf(date));
  const suns = days.map((day, at) => sunOfDay(day, dates[at]!));
  const years = yearsOf(days);
  const { meanC, rangeK, irradiationWhm2 } = drawDays(
    days.map((day, at) => weatherDay(day, dates[at]!, suns[at]!, years[at]!)),
    options,
  );
  const told = new ShareTold();
  return {
    runs,
    notes: days.map((day, at) =>
      note(at, years[at]!.normals[dates[at]!.month - 1]!, day.given !== undefined),
    ),
    fill: (day, clockH, dtH, outsideC, irradianceWm2) => {
      const sun = suns[day];
      if (sun === undefined) throw new RangeError(`weather: no day ${day} in a trip of ${days.length}`);
      const middle = clockH + dtH / 2;
      const curve = dayCurveShare(solarHour(sun, middle)) - DAY_CURVE_MEAN;
      fillTemperature(meanC, rangeK, runs, day, middle, curve, outsideC);
      const share = told.within(sun, clockH, dtH) / dtH;
      const start = day * runs;
      for (let i = 0; i < runs; i++) irradianceWm2[i] = irradiationWhm2[start + i]! * share;
    },
  };
}

/** The end of one step is the beginning of the next: its share of the day's radiation is worked out once. */
class ShareTold {
  private of: DaySun | null = null;
  private hour = Number.NaN;
  private share = Number.NaN;

  /** Share of the day's radiation within so many hours from a clock hour on. */
  within(sun: DaySun, clockH: number, hours: number): number {
    const before = sun === this.of && clockH === this.hour ? this.share : shareBefore(sun, clockH);
    this.of = sun;
    this.hour = clockH + hours;
    this.share = shareBefore(sun, this.hour);
    return this.share - before;
  }
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

/** The year of each day's place; days one after another at the same place are looked up once. */
function yearsOf(days: readonly DayPlace[]): PlaceYear[] {
  if (KNOWN_YEARS.size > MOST_KNOWN) KNOWN_YEARS.clear();
  let before: DayPlace | null = null;
  let year: PlaceYear | null = null;
  return days.map((day) => {
    if (year === null || before === null || !isSamePlace(before, day)) year = placeYear(day);
    before = day;
    return year;
  });
}

function isSamePlace(one: DayPlace, other: DayPlace): boolean {
  return (
    one.latitudeDeg === other.latitudeDeg &&
    one.longitudeDeg === other.longitudeDeg &&
    one.elevationM === other.elevationM
  );
}

function placeYear(day: DayPlace): PlaceYear {
  const key = `${day.latitudeDeg},${day.longitudeDeg},${day.elevationM}`;
  const known = KNOWN_YEARS.get(key);
  if (known !== undefined) return known;
  const normals = climateYear(day);
  const year = {
    normals,
    mean: nodesKeepingMeans(normals.map((normal) => normal.meanC)),
    low: nodesKeepingMeans(normals.map((normal) => normal.minC)),
    high: nodesKeepingMeans(normals.map((normal) => normal.maxC)),
    clearness: nodesKeepingMeans(normals.map((normal) => normal.clearness ?? NO_CLEARNESS)),
  };
  KNOWN_YEARS.set(key, year);
  return year;
}

function sunOfDay(day: DayPlace, { dayOfYear }: DayParts): DaySun {
  return daySun(day.latitudeDeg, day.longitudeDeg, dayOfYear, day.utcOffsetH);
}

function weatherDay(
  day: DayPlace,
  date: DayParts,
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

function note(day: number, normal: ClimateNormal, given: boolean): WeatherNote {
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
    given,
  };
}
