import { quantile } from "../../../formulas/statistics.ts";
import { indexOf } from "../../../stores/ensemble.ts";
import type { Trip } from "../../situation.ts";
import { isOffered } from "../do-acts.ts";
import type { LiveState, Recorder } from "../live-trip.ts";
import type { Timeline } from "../timeline.ts";

/** water beyond what the thirstiest life uses until the next tap, and the least that is carried: practice */
const MARGIN = 1.1;
const LEAST_L = 10;
export const ENOUGH_FOR = 1;

/** Remembers how much water each life has drawn by each edge of a stop. */
export class WaterRecorder implements Recorder {
  private readonly used = new Map<number, Float64Array>();
  private readonly edges: ReadonlySet<number>;

  constructor({ stops, steps }: Timeline) {
    this.edges = new Set([0, steps, ...stops.flatMap(({ arrive, leave }) => [arrive, leave])]);
  }

  before(step: number, { ensemble }: LiveState): void {
    if (this.edges.has(step)) this.used.set(step, ensemble.outOf[indexOf("freshWater")]!.slice());
  }

  after(): void {}

  between(from: number, to: number): number {
    const [first, last] = [this.used.get(from)!, this.used.get(to)!];
    return quantile(
      Array.from(last, (value, i) => value - first[i]!),
      ENOUGH_FOR,
    );
  }
}

export interface WaterByLeg {
  /** L, at departure and on leaving each stop */
  readonly atDeparture: number;
  readonly onLeaving: readonly number[];
}

/** The least water that reaches the next tap on every leg, up to the tank. Water weighs a kilogram a litre on the road. */
export function waterByLeg(
  trip: Trip,
  timeline: Timeline,
  recorder: WaterRecorder,
  tankL: number,
): WaterByLeg {
  const taps = trip.stops.map((stop) => stop.acts.includes("fillWater") && isOffered(stop, "fillWater"));
  const need = (from: number, after: number) => {
    const next = taps.findIndex((isTap, k) => k > after && isTap);
    const to = next < 0 ? timeline.steps : timeline.stops[next]!.arrive;
    const litres = Math.max(LEAST_L, recorder.between(from, to) * MARGIN);
    return Math.min(tankL, Math.ceil(litres / 5) * 5);
  };
  return {
    atDeparture: need(0, -1),
    onLeaving: timeline.stops.map(({ leave }, k) => need(leave, k)),
  };
}
