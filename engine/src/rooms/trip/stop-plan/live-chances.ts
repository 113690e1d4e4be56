import type { TripWeather } from "../../../climate/trip-weather.ts";
import { liveWeather } from "../../../climate/weather.ts";
import { indexOf } from "../../../stores/ensemble.ts";
import { STORES, type StoreId } from "../../../stores/stores.ts";
import type { Trip } from "../../situation.ts";
import { type LiveState, liveTrip, type Recorder } from "../live-trip.ts";
import type { TripPlan } from "../plan-trip.ts";
import { TROUBLE_SHARE } from "../record-trip.ts";
import { markPosts } from "../timeline.ts";
import { type Group, groupOf } from "./decisions.ts";
import { FROST_COST, NO_MEALS_COST, TROUBLE_COST } from "./prices.ts";

/** Only what the search asks: whether each store was in trouble in each life, and how cold the cabin became. */
class TroubleRecorder implements Recorder {
  private readonly watched: readonly {
    readonly store: StoreId;
    readonly s: number;
    readonly met: Uint8Array;
  }[];
  readonly coldest: Float64Array;

  constructor(tracked: readonly StoreId[], n: number) {
    this.watched = tracked.map((store) => ({ store, s: indexOf(store), met: new Uint8Array(n) }));
    this.coldest = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  }

  before(_step: number, { ensemble, cabinC }: LiveState): void {
    for (const { store, s, met } of this.watched) {
      const level = ensemble.level[s]!;
      const capacity = ensemble.capacity[s]![0]!;
      const full = STORES[store].trouble === "full";
      const edge = (full ? 1 - TROUBLE_SHARE : TROUBLE_SHARE) * capacity;
      for (let i = 0; i < met.length; i++) if (full ? level[i]! >= edge : level[i]! <= edge) met[i] = 1;
    }
    for (let i = 0; i < cabinC.length; i++) this.coldest[i] = Math.min(this.coldest[i]!, cabinC[i]!);
  }

  after(): void {}

  chances(): ReadonlyMap<StoreId, number> {
    return new Map(
      this.watched.map(({ store, met }) => [store, met.reduce((sum, one) => sum + one, 0) / met.length]),
    );
  }
}

export interface Chances {
  readonly byStore: ReadonlyMap<StoreId, number>;
  /** cost × chance by group, pence */
  readonly trouble: ReadonlyMap<Group, number>;
}

/** Lives variants of one trip through the same weather and the same draws. */
export class TripLiver {
  private readonly weather: TripWeather;
  private readonly frostC: number | null;
  evaluations = 0;

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
  }

  /** Stops, times and places must be those of the plan; acts, settings and levels may differ. */
  live(trip: Trip): Chances {
    this.evaluations += 1;
    const { input, systems, tracked, people } = this.plan;
    const timeline = {
      ...this.plan.timeline,
      postAmperes: markPosts(trip, this.plan.timeline.stops, this.plan.timeline.steps),
    };
    const recorder = new TroubleRecorder(tracked, this.lives);
    const { seed, spread } = input;
    const options = { runs: this.lives, people, seed, spread, restarts: [], weather: this.weather };
    const { without } = liveTrip(input.vehicle, systems, trip, timeline, options, recorder);
    const byStore = recorder.chances();
    const trouble = new Map<Group, number>();
    const add = (group: Group, cost: number) => trouble.set(group, (trouble.get(group) ?? 0) + cost);
    for (const [store, chance] of byStore) add(groupOf(store), chance * (TROUBLE_COST[store] ?? 0));
    const { frostC } = this;
    if (frostC !== null)
      add("energy", FROST_COST * (recorder.coldest.filter((least) => least < frostC).length / this.lives));
    for (const { asked, unmet } of without) add("energy", NO_MEALS_COST * shareOf(unmet, asked));
    return { byStore, trouble };
  }
}

function shareOf(part: Float64Array, whole: Float64Array): number {
  const sum = (values: Float64Array) => values.reduce((all, value) => all + value, 0);
  const all = sum(whole);
  return all > 0 ? sum(part) / all : 0;
}
