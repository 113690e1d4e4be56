import { Temporal } from "../base/time.ts";
import { clearSky, underCloud } from "../formulas/sun.ts";
import { sunPosition } from "../formulas/sun-position.ts";

/** One instant of a weather forecast. */
export interface SeriesPoint {
  readonly epochMs: number;
  readonly airC: number;
  /** part of the sky under cloud, 0 to 1; null where the forecast does not say */
  readonly cloudShare: number | null;
}

/** A civil day that a series covers. */
export interface SeriesDay {
  /** YYYY-MM-DD */
  readonly date: string;
  readonly minC: number;
  readonly maxC: number;
  /** global horizontal irradiation of the day, kWh/m²; null without cloud */
  readonly sunKwhM2: number | null;
}

const HOUR_MS = 3_600_000;
/** a day with a longer gap than this between its points is left out: its extremes would be guessed */
const MOST_GAP_H = 6;

/**
 * Days of a place in its time zone, from a forecast by instants in rising order. Lowest and highest are those of the
 * points, so that days of six-hourly points come out a little too even; radiation is that of a clear sky (Haurwitz)
 * under the nearest point's cloud (Kasten & Czeplak), summed by hours.
 */
export function daysFromSeries(
  points: readonly SeriesPoint[],
  place: { readonly latitudeDeg: number; readonly longitudeDeg: number },
  timeZone: string,
): SeriesDay[] {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return [];
  const dateAt = ({ epochMs }: SeriesPoint) =>
    Temporal.Instant.fromEpochMilliseconds(epochMs).toZonedDateTimeISO(timeZone).toPlainDate();
  const days: SeriesDay[] = [];
  const end = dateAt(last);
  for (let date = dateAt(first); Temporal.PlainDate.compare(date, end) <= 0; date = date.add({ days: 1 })) {
    const from = date.toZonedDateTime(timeZone).epochMilliseconds;
    const to = date.add({ days: 1 }).toZonedDateTime(timeZone).epochMilliseconds;
    const within = points.filter(({ epochMs }) => epochMs >= from && epochMs <= to);
    if (isCovered(points, from, to)) days.push(dayOf(date.toString(), within, points, place, from, to));
  }
  return days;
}

/** No gap longer than allowed between the points from the last before the day to the first after it. */
function isCovered(points: readonly SeriesPoint[], from: number, to: number): boolean {
  const start = points.findLastIndex(({ epochMs }) => epochMs <= from);
  const end = points.findIndex(({ epochMs }) => epochMs >= to);
  if (start < 0 || end < 0) return false;
  const used = points.slice(start, end + 1);
  return used.every((point, k) => k === 0 || point.epochMs - used[k - 1]!.epochMs <= MOST_GAP_H * HOUR_MS);
}

function dayOf(
  date: string,
  within: readonly SeriesPoint[],
  points: readonly SeriesPoint[],
  place: { readonly latitudeDeg: number; readonly longitudeDeg: number },
  from: number,
  to: number,
): SeriesDay {
  const air = within.map(({ airC }) => airC);
  const cloudy = points.filter(({ cloudShare }) => cloudShare !== null);
  let sunWh = 0;
  for (let at = from; at < to; at += HOUR_MS) {
    const middle = at + HOUR_MS / 2;
    const { altitudeDeg } = sunPosition(place.latitudeDeg, place.longitudeDeg, middle);
    if (altitudeDeg > 0) sunWh += underCloud(clearSky(altitudeDeg), cloudAt(cloudy, middle));
  }
  return {
    date,
    minC: Math.min(...air),
    maxC: Math.max(...air),
    sunKwhM2: cloudy.length === 0 ? null : sunWh / 1000,
  };
}

function cloudAt(cloudy: readonly SeriesPoint[], epochMs: number): number {
  let near = cloudy[0];
  for (const point of cloudy)
    if (near === undefined || Math.abs(point.epochMs - epochMs) < Math.abs(near.epochMs - epochMs))
      near = point;
  return near?.cloudShare ?? 0;
}
