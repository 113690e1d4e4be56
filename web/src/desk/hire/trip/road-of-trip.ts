import type { Trip as EngineTrip } from "@setfair/engine";
import type { RoadStop } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import type { Trip } from "./trip-draft.ts";

const minutesOf = (local: string): number => Date.parse(`${local}:00Z`) / 60_000;

/** The stops of the trip on the road, with what the plan does at each. */
export function roadOf(trip: Trip | EngineTrip): readonly RoadStop[] {
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
    })),
    { key: "home", name: home, share: 1, acts: null },
  ];
}
