import type { RoomAnswer } from "../../base/finding.ts";
import type { TripForecast, TripInput } from "./types.ts";

/** Lives the trip N times; see {@link TripForecast}. Throws BadInput that names the field. */
export function forecastTrip(_input: TripInput): RoomAnswer<TripForecast> {
  throw new Error("forecastTrip: under construction");
}
