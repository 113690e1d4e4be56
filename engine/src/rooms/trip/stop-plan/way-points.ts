import { copyStores, restoreStores } from "../../../stores/ensemble.ts";
import type { Trip } from "../../situation.ts";
import type { LiveState, TakenUp } from "../live-trip.ts";
import type { TroubleRecorder } from "./trouble-recorder.ts";

/** the oldest are dropped beyond so many: about 5 MB */
const MOST_KEPT = 400;

/** A trip as it stood on arriving at a stop. */
interface WayPoint {
  readonly stores: Float64Array;
  readonly recorded: ReturnType<TroubleRecorder["copy"]>;
  readonly without: readonly Float64Array[];
}

/**
 * Trips of a search differ in what is done at their stops: two that do the same up to a stop arrive there alike. What
 * each held on arriving is kept, and the next trip that comes there the same way is taken up from it.
 */
export class WayPoints {
  private readonly kept = new Map<string, WayPoint>();

  /** Names of the ways to each stop, in their order, and last that of the whole trip. */
  static waysOf({ departWith, stops }: Trip): readonly string[] {
    const ways = [JSON.stringify(departWith)];
    for (const { acts, pitch, settings, leaveWithWaterL } of stops)
      ways.push(ways.at(-1)! + JSON.stringify([acts, pitch, settings, leaveWithWaterL]));
    return ways;
  }

  /** The latest place from which a trip can be taken up; undefined where it has to be lived from its departure. */
  takeUp(
    ways: readonly string[],
    arrivals: readonly number[],
    recorder: TroubleRecorder,
  ): TakenUp | undefined {
    for (let stop = arrivals.length - 1; stop >= 0; stop--) {
      const point = this.kept.get(ways[stop]!);
      if (point === undefined) continue;
      return { step: arrivals[stop]!, restore: (live) => restore(point, live, recorder) };
    }
    return undefined;
  }

  keep(way: string, live: LiveState, recorder: TroubleRecorder): void {
    if (this.kept.has(way)) return;
    this.kept.set(way, {
      stores: copyStores(live.ensemble),
      recorded: recorder.copy(),
      without: countsOf(live).map((counts) => counts.slice()),
    });
    if (this.kept.size > MOST_KEPT) this.kept.delete(this.kept.keys().next().value!);
  }
}

function restore(point: WayPoint, live: LiveState, recorder: TroubleRecorder): void {
  restoreStores(live.ensemble, point.stores);
  recorder.restore(point.recorded);
  countsOf(live).forEach((counts, k) => {
    counts.set(point.without[k]!);
  });
}

function countsOf({ without }: LiveState): Float64Array[] {
  return without.flatMap(({ asked, unmet, askedAt, unmetAt }) => [asked, unmet, askedAt, unmetAt]);
}
