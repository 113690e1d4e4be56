import type { IsoDate } from "../../base/time.ts";
import { addDays, daysBetween } from "../../base/years.ts";
import type { DayPlace } from "../../climate/trip-weather.ts";
import { liveWeather } from "../../climate/weather.ts";
import type { Place, Trip } from "../situation.ts";
import { givenFor } from "../trip/given-weather.ts";

/** A night of the trip, by the date of its morning. A stop without a night counts with the morning of its day. */
export interface FrostNight {
  readonly country: string;
  readonly date: IsoDate;
  /** in which lives of the weather it has frost */
  readonly frost: readonly boolean[];
}
/** Frost over some nights. */
export interface FrostSum {
  readonly nights: number;
  /** how many of them have frost, on average over all lives */
  readonly expected: number;
  /** share of the lives with frost on any of them, 0 to 1 */
  readonly chance: number;
}

/** lives of the weather: enough for a chance told in steps of 5 %, and always the same ones */
const LIVES = 400;
const SEED = 1;
/** the coldest hour of a night lies before this one of its morning, h */
const MORNING_H = 10;

/**
 * The nights at the stops of a trip and in which lives the air falls to `belowC` (°C) or less: from the monthly
 * normals with their daily spread, or from the forecast that the trip carries for its days. Neither holds rain or
 * snow, so that this is frost, not a wintry road.
 */
export function frostNights(trip: Trip, belowC: number): readonly FrostNight[] {
  const mornings = trip.stops.flatMap(({ place, arrive, leave }) => {
    const first = arrive.slice(0, 10);
    const nights = daysBetween(first, leave.slice(0, 10));
    const dates = nights > 0 ? Array.from({ length: nights }, (_, k) => addDays(first, k + 1)) : [first];
    return dates.map((date) => ({ place, date }));
  });
  const lows = coldest(mornings.map(({ place, date }) => dayAt(trip, place, date)));
  return mornings.map(({ place, date }, k) => ({
    country: place.country,
    date,
    frost: lows[k]!.map((low) => low <= belowC),
  }));
}

/** Chance of any and expected number of nights of frost among these. */
export function sumFrost(nights: readonly FrostNight[]): FrostSum {
  const lives = Array.from({ length: LIVES }, (_, life) => nights.filter(({ frost }) => frost[life]).length);
  const share = (counts: readonly number[]) => counts.reduce((sum, count) => sum + count, 0) / LIVES;
  return {
    nights: nights.length,
    expected: share(lives),
    chance: share(lives.map((count) => (count > 0 ? 1 : 0))),
  };
}

function dayAt(trip: Trip, place: Place, date: IsoDate): DayPlace {
  const given = givenFor(trip.weather, place, date);
  return {
    ...(given === null ? {} : { given }),
    latitudeDeg: place.latitudeDeg,
    longitudeDeg: place.longitudeDeg,
    elevationM: place.elevationM ?? 0,
    date,
    // sun time will do: the whole night is looked at
    utcOffsetH: Math.round(place.longitudeDeg / 15),
  };
}

/** The coldest hour of each morning, °C, in every life. */
function coldest(days: readonly DayPlace[]): readonly (readonly number[])[] {
  if (days.length === 0) return [];
  const weather = liveWeather(days, { runs: LIVES, seed: SEED, spread: true });
  const [outsideC, sun] = [new Float64Array(LIVES), new Float64Array(LIVES)];
  return days.map((_, day) => {
    const low = new Array<number>(LIVES).fill(Number.POSITIVE_INFINITY);
    for (let hour = 0; hour < MORNING_H; hour++) {
      weather.fill(day, hour, 1, outsideC, sun);
      for (let life = 0; life < LIVES; life++) low[life] = Math.min(low[life]!, outsideC[life]!);
    }
    return low;
  });
}
