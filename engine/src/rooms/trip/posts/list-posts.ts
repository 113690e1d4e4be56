import type { TripPlan } from "../plan-trip.ts";
import type { StopForecast } from "../types.ts";
import { listLoads, type Outside } from "./list-loads.ts";
import { sizePost } from "./size-post.ts";
import type { PostForecast } from "./types.ts";

/** What each post of the trip where the vehicle is plugged in can do for it, in the order of the stops. */
export function listPosts(
  { input, systems }: TripPlan,
  stops: readonly StopForecast[],
  hottest: (stop: number) => number | null,
): PostForecast[] {
  return stops.flatMap(({ stop, name, onHookUp, coldestNightC }): PostForecast[] => {
    if (!onHookUp) return [];
    const { pitch, settings } = input.trip.stops[stop]!;
    const outside: Outside = { coldC: coldestNightC?.p10 ?? null, hotC: hottest(stop) };
    const mains = listLoads(systems, (id) => ({ ...input.trip.settings[id], ...settings?.[id] }), outside);
    const sized = sizePost(stop, name, pitch.postAmperes, mains);
    return sized === null ? [] : [sized];
  });
}
