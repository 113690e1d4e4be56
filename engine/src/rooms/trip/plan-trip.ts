import type * as z from "zod/mini";
import { BadInput, parseWith } from "../../base/bad-input.ts";
import { STORE_IDS, STORES, type StoreId } from "../../stores/stores.ts";
import { type FittedPhysics, fitSystems } from "./fit-systems.ts";
import { cutTimeline, type Timeline } from "./timeline.ts";
import { type TripInput, tripInputSchema } from "./types.ts";

export type ParsedTrip = z.output<typeof tripInputSchema>;

/** A trip that has been checked and cut into steps, ready to be lived. */
export interface TripPlan {
  readonly input: ParsedTrip;
  readonly systems: readonly FittedPhysics[];
  readonly timeline: Timeline;
  /** stores that the vehicle has and that can be in trouble */
  readonly tracked: readonly StoreId[];
  readonly people: number;
}

/** Checks the whole input and cuts the trip into steps. Throws BadInput that names each field. */
export function planTrip(raw: TripInput): TripPlan {
  const input = parseWith<ParsedTrip>(tripInputSchema as z.ZodMiniType<ParsedTrip>, raw);
  const systems = fitSystems(input.vehicle, input);
  const ids = new Set(input.vehicle.systems.map(({ id }) => id));
  const named = [
    ...Object.keys(input.trip.settings).map((id) => ({ id, path: `trip.settings.${id}` })),
    ...input.trip.stops.flatMap(({ settings }, k) =>
      Object.keys(settings ?? {}).map((id) => ({ id, path: `trip.stops.${k}.settings.${id}` })),
    ),
  ];
  const strange = named.filter(({ id }) => !ids.has(id));
  if (strange.length > 0) {
    throw new BadInput(
      strange.map(({ path }) => ({
        path,
        expected: `expected the id of a fitted system: ${[...ids].join(", ")}`,
      })),
    );
  }
  const held = new Set(systems.flatMap(({ shares }) => shares.map(({ store }) => store)));
  const people = input.party.travellers.length;
  return {
    input,
    systems,
    timeline: cutTimeline(input.trip, people, input.stepMinutes / 60),
    tracked: STORE_IDS.filter((store) => held.has(store) && STORES[store].trouble !== "none"),
    people,
  };
}
