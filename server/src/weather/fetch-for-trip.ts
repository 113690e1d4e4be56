import { daysFromSeries, type GivenWeather, listTripDays, type Trip, type TripDay } from "@setfair/engine";
import type { WeatherService } from "./weather-service.ts";

/** different places asked about for one trip; more are left to the climate */
const MOST_PLACES = 12;

const keyOf = ({ latitudeDeg, longitudeDeg }: TripDay) =>
  `${latitudeDeg.toFixed(2)},${longitudeDeg.toFixed(2)}`;

/**
 * The forecast of a service for the days of a trip that it covers, each at the place of its night; null where it
 * covers none. `issued` is the civil time of asking in the trip's zone. Throws WeatherUnavailable.
 */
export async function fetchForTrip(
  service: WeatherService,
  trip: Trip,
  issued: string,
): Promise<GivenWeather | null> {
  const ahead = listTripDays(trip).filter(({ date }) => date >= issued.slice(0, 10));
  const places = new Map<string, readonly TripDay[]>();
  for (const day of ahead) places.set(keyOf(day), [...(places.get(keyOf(day)) ?? []), day]);
  const days: GivenWeather["days"][number][] = [];
  for (const here of [...places.values()].slice(0, MOST_PLACES)) {
    const [place] = here;
    if (place === undefined) continue;
    // one after the other: the open services ask for it
    const found = daysFromSeries(await service.forecastAt(place), place, trip.timeZone);
    for (const { date, latitudeDeg, longitudeDeg } of here) {
      const day = found.find((one) => one.date === date);
      if (day === undefined) continue;
      const { minC, maxC, sunKwhM2 } = day;
      days.push({
        date,
        latitudeDeg,
        longitudeDeg,
        minC,
        maxC,
        ...(sunKwhM2 === null ? {} : { sunKwhM2: Math.min(12, sunKwhM2) }),
      });
    }
  }
  if (days.length === 0) return null;
  return { source: service.credit, issued, days: days.sort((a, b) => (a.date < b.date ? -1 : 1)) };
}
