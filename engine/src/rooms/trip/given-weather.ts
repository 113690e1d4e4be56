import { Temporal } from "../../base/time.ts";
import { distanceKm } from "../../climate/surface.ts";
import type { GivenDay } from "../../climate/trip-weather.ts";
import type { GivenWeather, Place } from "../situation.ts";

/** a forecast counts for places no further from its own than this, km: practice */
const SAME_PLACE_KM = 30;

/** What a given forecast says of a day at a place; null where it says nothing of it. `date` is a civil date. */
export function givenFor(weather: GivenWeather | undefined, place: Place, date: string): GivenDay | null {
  const near = weather?.days.filter(
    (day) =>
      day.date === date &&
      distanceKm(day.latitudeDeg, day.longitudeDeg, place.latitudeDeg, place.longitudeDeg) <= SAME_PLACE_KM,
  );
  const day = near?.[0];
  if (weather === undefined || day === undefined) return null;
  const leadDays = Temporal.PlainDate.from(weather.issued.slice(0, 10)).until(date, {
    largestUnit: "days",
  }).days;
  return {
    minC: day.minC,
    maxC: day.maxC,
    sunWhM2: day.sunKwhM2 === undefined ? null : day.sunKwhM2 * 1000,
    leadDays: Math.max(0, leadDays),
  };
}
