import type { RoomAnswer } from "../../base/finding.ts";
import type { Reading, TripForecast, TripInput } from "./types.ts";

/** The forecast again, after what the hirer read on the panel. Throws BadInput that names the field. */
export function reforecastTrip(_input: TripInput, _readings: readonly Reading[]): RoomAnswer<TripForecast> {
  throw new Error("reforecastTrip: under construction");
}
