import * as z from "zod/mini";
import { parseWith } from "../../base/bad-input.ts";
import { figure } from "../../base/figure.ts";
import type { RoomAnswer } from "../../base/finding.ts";
import { liveWeather } from "../../climate/weather.ts";
import { STORES } from "../../stores/stores.ts";
import { findTripTrouble } from "./find-trip-trouble.ts";
import { goesWithout } from "./goes-without.ts";
import { liveTrip } from "./live-trip.ts";
import { planTrip } from "./plan-trip.ts";
import { TripRecorder } from "./record-trip.ts";
import { SpreadOf } from "./spread-of.ts";
import { summariseTrip } from "./summarise-trip.ts";
import { type Reading, type ReadingUse, readingSchema, type TripForecast, type TripInput } from "./types.ts";
import { type WeighedReading, weighReadings } from "./weigh-readings.ts";

const readingsSchema = z.array(readingSchema).check(z.maxLength(60));

/**
 * The forecast again, after what the hirer read on the panel: lives that agree with the readings count more;
 * a store read far from every life restarts from its reading, with the reading's error, and what draws on it
 * is taken to be twice as uncertain. Trouble and the chance of reaching a stop count from the latest reading on: what
 * was forecast for the time before is past. Throws BadInput that names the field.
 */
export function reforecastTrip(raw: TripInput, readings: readonly Reading[]): RoomAnswer<TripForecast> {
  const plan = planTrip(raw);
  const { input, systems, timeline, tracked, people } = plan;
  const { runs, seed, spread } = input;
  const weather = liveWeather(timeline.days, { runs, seed, spread });
  const weighed = weighReadings(plan, parseWith(readingsSchema, readings, "readings"), weather);
  const { weights, latest } = weighed;
  const recorder = new TripRecorder(tracked, timeline, new SpreadOf(runs, weights), latest);
  const options = { runs, people, seed, spread, restarts: weighed.restarts, weather };
  const lived = liveTrip(input.vehicle, systems, input.trip, timeline, options, recorder);
  const result = summariseTrip(plan, lived, recorder, weighed.readings.map(shownReading));
  const without = goesWithout(plan, recorder.spread, lived.without);
  return { result, findings: [...findTripTrouble(plan, recorder, result), ...without] };
}

function shownReading({
  store,
  at,
  unit,
  level,
  sd,
  expectedP50,
  how,
  effective,
}: WeighedReading): ReadingUse {
  return {
    store,
    at,
    level: figure(level, STORES[store].unit, "-", { readIn: unit, sd }, "measured"),
    expectedP50,
    how,
    effective,
  };
}
