import type { TripPlan } from "../plan-trip.ts";
import type { StopForecast } from "../types.ts";
import { countsThen, listLoads, type Outside } from "./list-loads.ts";
import { listAlone, sizePost } from "./size-post.ts";
import type { PostForecast, PostSize } from "./types.ts";

/** What each post of the trip where the vehicle is plugged in can do for it, in the order of the stops. */
export function listPosts(
  { input, systems }: TripPlan,
  stops: readonly StopForecast[],
  hottest: (stop: number) => number | null,
): PostForecast[] {
  // many stops of a long trip ask the same of a post
  const known = new Map<string, Omit<PostForecast, "stop" | "name"> | null>();
  return stops.flatMap(({ stop, name, onHookUp, coldestNightC }): PostForecast[] => {
    if (!onHookUp) return [];
    const { pitch, settings } = input.trip.stops[stop]!;
    const outside: Outside = { coldC: coldestNightC?.p10 ?? null, hotC: hottest(stop) };
    const { cold, hot } = countsThen(outside);
    const asked = `${pitch.postAmperes} ${cold} ${hot} ${settings === undefined ? "" : JSON.stringify(settings)}`;
    let post = known.get(asked);
    if (post === undefined) {
      const settingOf = (id: string) => ({ ...input.trip.settings[id], ...settings?.[id] });
      const mains = listLoads(systems, settingOf, outside);
      const sized = sizePost(pitch.postAmperes, mains);
      post = sized === null ? null : { ...sized, alone: listAlone(sized, mains) };
      known.set(asked, post);
    }
    return post === null ? [] : [{ stop, name, ...post }];
  });
}

/** The ratings that pitches have, for a hirer who stands before a post that nobody planned: common practice. */
const USUAL_A = [4, 6, 10, 16] as const;

/** What posts of the usual ratings can do for this vehicle anywhere on the trip, in its coldest and hottest weather. */
export function listUsualPosts(
  { input, systems }: TripPlan,
  stops: readonly StopForecast[],
  hottest: (stop: number) => number | null,
): PostSize[] {
  const known = (values: readonly (number | null)[]) => values.filter((value) => value !== null);
  const cold = known(stops.map(({ coldestNightC }) => coldestNightC?.p10 ?? null));
  const hot = known(stops.map(({ stop }) => hottest(stop)));
  const outside: Outside = {
    coldC: cold.length === 0 ? null : Math.min(...cold),
    hotC: hot.length === 0 ? null : Math.max(...hot),
  };
  const mains = listLoads(systems, (id) => input.trip.settings[id] ?? {}, outside);
  return USUAL_A.flatMap((postA) => sizePost(postA, mains) ?? []);
}
