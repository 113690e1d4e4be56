import type { Trip } from "../situation.ts";
import { cutTimeline } from "./timeline.ts";

/** A day of a trip and the place that gives it its weather. */
export interface TripDay {
  /** civil date, YYYY-MM-DD */
  readonly date: string;
  /** index in `stops`, or `home` */
  readonly stop: number | "home";
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
}

/** The days of a trip as the forecast takes their weather: that of the place of the night. Throws BadInput for impossible times. */
export function listTripDays(trip: Trip): readonly TripDay[] {
  const { days, dayStop } = cutTimeline(trip, 1, 1);
  return days.map(({ date, latitudeDeg, longitudeDeg, elevationM }, k) => {
    const stop = dayStop[k]!;
    return { date, stop: stop < 0 ? "home" : stop, latitudeDeg, longitudeDeg, elevationM };
  });
}
