import type { TripWeather } from "../../../climate/trip-weather.ts";
import { liveWeather } from "../../../climate/weather.ts";
import type { StoreId } from "../../../stores/stores.ts";
import type { Trip } from "../../situation.ts";
import { liveTrip } from "../live-trip.ts";
import type { TripPlan } from "../plan-trip.ts";
import { markPosts } from "../timeline.ts";
import { type Group, groupOf } from "./decisions.ts";
import { FROST_COST, NO_MEALS_COST, TROUBLE_COST } from "./prices.ts";
import { TroubleRecorder } from "./trouble-recorder.ts";
import { WayPoints } from "./way-points.ts";

export interface Chances {
  readonly byStore: ReadonlyMap<StoreId, number>;
  /** cost × chance by group, pence */
  readonly trouble: ReadonlyMap<Group, number>;
}

/**
 * Lives variants of one trip through the same weather and the same draws. A variant that was lived before is not lived
 * again; one that does the same up to a stop is taken up there.
 */
export class TripLiver {
  private readonly weather: TripWeather;
  private readonly frostC: number | null;
  private readonly points = new WayPoints();
  private readonly known = new Map<string, Chances>();
  private readonly arrivals: readonly number[];
  private readonly stopArriving: ReadonlyMap<number, number>;
  /** variants lived, and the work of it in whole runs: what is taken up on the way is less than one */
  evaluations = 0;
  runs = 0;

  constructor(
    private readonly plan: TripPlan,
    readonly lives: number,
  ) {
    const { seed, spread } = plan.input;
    this.weather = liveWeather(plan.timeline.days, { runs: lives, seed, spread });
    const valve = plan.systems.find(
      ({ spec }) => typeof spec.frostValveC === "number" && spec.frostValveC > 0,
    );
    this.frostC = valve === undefined ? null : (valve.spec.frostValveC as number);
    this.arrivals = plan.timeline.stops.map(({ arrive }) => arrive);
    this.stopArriving = new Map(this.arrivals.map((step, stop) => [step, stop]));
  }

  /** Stops, times and places must be those of the plan; acts, settings and levels may differ. */
  live(trip: Trip): Chances {
    const ways = WayPoints.waysOf(trip);
    const known = this.known.get(ways.at(-1)!);
    if (known !== undefined) return known;
    this.evaluations += 1;
    const chances = this.liveNew(trip, ways);
    this.known.set(ways.at(-1)!, chances);
    return chances;
  }

  private liveNew(trip: Trip, ways: readonly string[]): Chances {
    const { input, systems, tracked, people } = this.plan;
    const timeline = {
      ...this.plan.timeline,
      postAmperes: markPosts(trip, this.plan.timeline.stops, this.plan.timeline.steps),
    };
    const recorder: TroubleRecorder = new TroubleRecorder(
      tracked,
      this.lives,
      this.stopArriving,
      (stop, live) => this.points.keep(ways[stop]!, live, recorder),
    );
    const from = this.points.takeUp(ways, this.arrivals, recorder);
    this.runs += 1 - (from?.step ?? 0) / timeline.steps;
    const { seed, spread } = input;
    const options = {
      runs: this.lives,
      people,
      seed,
      spread,
      restarts: [],
      weather: this.weather,
      ...(from === undefined ? {} : { from }),
    };
    const { without } = liveTrip(input.vehicle, systems, trip, timeline, options, recorder);
    const byStore = recorder.chances();
    const trouble = new Map<Group, number>();
    const add = (group: Group, cost: number) => trouble.set(group, (trouble.get(group) ?? 0) + cost);
    for (const [store, chance] of byStore) add(groupOf(store), chance * (TROUBLE_COST[store] ?? 0));
    if (this.frostC !== null) add("energy", FROST_COST * recorder.chanceColder(this.frostC));
    for (const { asked, unmet } of without) add("energy", NO_MEALS_COST * shareOf(unmet, asked));
    return { byStore, trouble };
  }
}

function shareOf(part: Float64Array, whole: Float64Array): number {
  const sum = (values: Float64Array) => values.reduce((all, value) => all + value, 0);
  const all = sum(whole);
  return all > 0 ? sum(part) / all : 0;
}
