import type { Trip as EngineTrip, TripForecast } from "@setfair/engine";
import type { RoadStop } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import type { Trip } from "./trip-draft.ts";

const minutesOf = (local: string): number => Date.parse(`${local}:00Z`) / 60_000;

/** A stop that is reached with everything less often than this is marked: policy of the tool. */
const LOW_PCT = 80;

const chanceOf = (pct: number): NonNullable<RoadStop["chance"]> => ({
  text: t("trip.reach.at", { pct }),
  spoken: t("trip.reach.spoken"),
  isLow: pct < LOW_PCT,
});

/** The stops of the trip on the road, with what is done at each and the chance of reaching it with nothing run out. */
export function roadOf(trip: Trip | EngineTrip, forecast: TripForecast): readonly RoadStop[] {
  const start = minutesOf(trip.depart);
  const length = Math.max(1, minutesOf(trip.return) - start);
  const home = t("trip.depot");
  return [
    { key: "out", name: home, share: 0, acts: null },
    ...trip.stops.map((stop, k) => ({
      key: `${k}.${stop.arrive}`,
      name: stop.place.name,
      share: (minutesOf(stop.arrive) - start) / length,
      acts: stop.acts.length === 0 ? null : stop.acts.map((act) => t(`act.${act}`)).join(", "),
      chance: chanceOf(forecast.stops[k]?.reachShownPct ?? 0),
    })),
    { key: "home", name: home, share: 1, acts: null, chance: chanceOf(forecast.lastsShownPct) },
  ];
}
