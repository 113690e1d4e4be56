import type { RoomAnswer } from "../../base/finding.ts";
import { findTripTrouble } from "./find-trip-trouble.ts";
import { goesWithout } from "./goes-without.ts";
import { liveTrip } from "./live-trip.ts";
import { planTrip } from "./plan-trip.ts";
import { TripRecorder } from "./record-trip.ts";
import { SpreadOf } from "./spread-of.ts";
import { summariseTrip } from "./summarise-trip.ts";
import type { TripForecast, TripInput } from "./types.ts";

/**
 * Lives the trip `runs` times and says per store when it is first in trouble and with what chance.
 * The same input gives the same answer. Throws BadInput that names the field.
 */
export function forecastTrip(raw: TripInput): RoomAnswer<TripForecast> {
  const plan = planTrip(raw);
  const { input, systems, timeline, tracked, people } = plan;
  const { runs, seed, spread } = input;
  const recorder = new TripRecorder(tracked, timeline, new SpreadOf(runs, null));
  const options = { runs, people, seed, spread, restarts: [] };
  const lived = liveTrip(input.vehicle, systems, input.trip, timeline, options, recorder);
  const result = summariseTrip(plan, lived, recorder, []);
  const without = goesWithout(plan, recorder.spread, lived.without);
  return { result, findings: [...findTripTrouble(plan, recorder, result), ...without] };
}
