import { indexOf, setLevel } from "../../stores/ensemble.ts";
import { STORES } from "../../stores/stores.ts";
import { type LiveState, liveTrip, type Recorder } from "../trip/live-trip.ts";
import type { TripPlan } from "../trip/plan-trip.ts";
import { TROUBLE_SHARE } from "../trip/record-trip.ts";
import { READABLE_STORES, type ReadableStore } from "../trip/types.ts";
import { readLevel } from "../trip/weigh-readings.ts";
import type { LeftOutWhy, Measured } from "./types.ts";

/** Where the forecast has run out (or over) in more lives than this, it says how much there was, not how much is used. */
const MOST_RUN_OUT = 0.1;
/** the sun may give so much of what the battery gave between two readings, or they tell of the sun, not of the use: practice */
const MOST_SUN = 0.25;
/** a charge point that gives more than this share of what the road takes must be on the bill, or the window says little: practice */
const MOST_ON_THE_WAY = 0.02;
/** an amount by the till or the scale is this far out: practice */
const ADDED_ERROR = 0.02;

/** The hours between two readings of a store. */
export interface MeteredWindow {
  /** measured, in the store's unit */
  readonly used: number;
  readonly sd: number;
  readonly hours: number;
  /** by life, what the forecast used in these hours */
  readonly forecast: Float64Array;
  /** sum over the lives of what heating had of it */
  readonly warmth: number;
  /** why it cannot be compared; null where it can */
  readonly why: LeftOutWhy | null;
}

interface Level {
  readonly store: ReadableStore;
  readonly step: number;
  readonly level: number;
  readonly sd: number;
}

/** Lives the trip once and sets beside each pair of readings of a store what the forecast used between them. */
export function meterWindows(
  plan: TripPlan,
  { readings, added }: Measured,
): ReadonlyMap<ReadableStore, readonly MeteredWindow[]> {
  const stores = READABLE_STORES.filter((store) => plan.tracked.includes(store));
  const levels = readings.flatMap((reading, index): Level[] => {
    if (!stores.includes(reading.store)) return [];
    const { step, level, statedSd } = readLevel(plan, reading, index);
    return [{ store: reading.store, step, level, sd: statedSd }];
  });
  const best = levels
    .toSorted((a, b) => a.step - b.step || a.sd - b.sd)
    // of two readings at one time the more exact
    .filter(
      ({ store, step }, k, all) => all.findIndex((each) => each.store === store && each.step === step) === k,
    );
  const meter = new UseMeter(best);
  const { input, systems, timeline, people } = plan;
  const { runs, seed, spread } = input;
  liveTrip(input.vehicle, systems, input.trip, timeline, { runs, people, seed, spread, restarts: [] }, meter);
  const puts = added.map((put) => ({ ...put, step: timeline.stepAt(put.at) }));
  return new Map(
    stores.map((store) => {
      const own = best.filter((level) => level.store === store);
      const windows = own.slice(1).map((to, k): MeteredWindow => {
        const from = own[k]!;
        const put = puts.filter(
          (each) =>
            each.store === store &&
            each.step <= to.step &&
            (each.step > from.step || (k === 0 && each.step === from.step)),
        );
        const amount = put.reduce((sum, each) => sum + each.amount, 0);
        return {
          ...usedBetween(store, from, to, amount),
          hours: (to.step - from.step) * timeline.dtH,
          forecast: meter.between(store, from.step, to.step),
          warmth: meter.warmthBetween(store, from.step, to.step),
          why: whyNot(plan, meter, store, from.step, to.step, put.length > 0),
        };
      });
      return [store, windows] as const;
    }),
  );
}

function usedBetween(store: ReadableStore, from: Level, to: Level, added: number) {
  const fell = STORES[store].trouble === "full" ? to.level - from.level : from.level - to.level;
  return { used: fell + added, sd: Math.hypot(from.sd, to.sd, ADDED_ERROR * added) };
}

function whyNot(
  { timeline }: TripPlan,
  meter: UseMeter,
  store: ReadableStore,
  from: number,
  to: number,
  isAdded: boolean,
): LeftOutWhy | null {
  if (meter.hasRunOut(store, to)) return "ranOut";
  if (store !== "battery12" && store !== "tractionBattery")
    return meter.isTouched(store, from, to) && !isAdded ? "filledUnknown" : null;
  const { driving, postAmperes } = timeline;
  for (let step = from; step < to; step++)
    if (postAmperes[step]! > 0 || (store === "battery12" && driving[step] === 1)) return "charged";
  const gained = meter.gainOverUse(store, from, to);
  if (store === "battery12") return gained > MOST_SUN ? "charged" : null;
  return gained > MOST_ON_THE_WAY && !isAdded ? "charged" : null;
}

function runOutShare(store: ReadableStore, { ensemble }: LiveState): number {
  const s = indexOf(store);
  const isFull = STORES[store].trouble === "full";
  const capacity = ensemble.capacity[s]!;
  const out = ensemble.level[s]!.reduce((count, level, i) => {
    const left = isFull ? capacity[i]! - level : level;
    return count + (left <= TROUBLE_SHARE * capacity[i]! ? 1 : 0);
  }, 0);
  return out / ensemble.n;
}

interface Total {
  readonly use: Float64Array;
  readonly warmth: number;
  /** sums over the lives */
  readonly gained: number;
  readonly drawn: number;
}

/**
 * Counts by life what each store has used, like a meter that is read at the hours of the readings, and puts the store
 * to what was read there: the forecast of each window begins where the window began, so that a battery that ran low
 * in the forecast only stops no pump and no heater of later days.
 */
class UseMeter implements Recorder {
  private readonly ends = new Map<string, Total>();
  private readonly begins = new Map<string, Total>();
  private readonly runOut = new Set<string>();
  private readonly touched = new Map<ReadableStore, number[]>();
  private readonly stores: readonly ReadableStore[];
  private readonly read: ReadonlyMap<string, Level>;
  private readonly first = new Map<ReadableStore, number>();

  constructor(levels: readonly Level[]) {
    this.stores = [...new Set(levels.map(({ store }) => store))];
    this.read = new Map(levels.map((level) => [`${level.store}@${level.step}`, level]));
  }

  before(step: number, live: LiveState): void {
    const { ensemble } = live;
    for (const store of this.stores) {
      const s = indexOf(store);
      const key = `${store}@${step}`;
      if (this.read.has(key)) {
        this.ends.set(key, totalOf(store, live));
        if (runOutShare(store, live) > MOST_RUN_OUT) this.runOut.add(key);
      }
      this.first.set(store, sumOf(ensemble.into[s]!) + sumOf(ensemble.outOf[s]!));
    }
  }

  after(step: number, live: LiveState): void {
    const { ensemble } = live;
    for (const store of this.stores) {
      const s = indexOf(store);
      if (sumOf(ensemble.into[s]!) + sumOf(ensemble.outOf[s]!) !== this.first.get(store))
        this.touched.set(store, [...(this.touched.get(store) ?? []), step]);
      const key = `${store}@${step}`;
      const read = this.read.get(key);
      if (read === undefined) continue;
      for (let i = 0; i < ensemble.n; i++) setLevel(ensemble, s, i, read.level);
      this.begins.set(key, totalOf(store, live));
    }
  }

  /** Whether the forecast filled or emptied the store by hand from one step up to, not with, another. */
  isTouched(store: ReadableStore, from: number, to: number): boolean {
    return (this.touched.get(store) ?? []).some((step) => step >= from && step < to);
  }

  hasRunOut(store: ReadableStore, at: number): boolean {
    return this.runOut.has(`${store}@${at}`);
  }

  between(store: ReadableStore, from: number, to: number): Float64Array {
    const begin = this.begins.get(`${store}@${from}`)!.use;
    return this.ends.get(`${store}@${to}`)!.use.map((total, i) => total - begin[i]!);
  }

  /** What sun or charge points gave a battery, over all that was drawn from it; many times where little was. */
  gainOverUse(store: ReadableStore, from: number, to: number): number {
    const [begin, end] = [this.begins.get(`${store}@${from}`)!, this.ends.get(`${store}@${to}`)!];
    return (end.gained - begin.gained) / Math.max(1e-9, end.drawn - begin.drawn);
  }

  warmthBetween(store: ReadableStore, from: number, to: number): number {
    return this.ends.get(`${store}@${to}`)!.warmth - this.begins.get(`${store}@${from}`)!.warmth;
  }
}

function totalOf(store: ReadableStore, { ensemble, warmthDrawn }: LiveState): Total {
  const s = indexOf(store);
  const [into, outOf] = [ensemble.into[s]!, ensemble.outOf[s]!];
  return { use: use(store, into, outOf), warmth: warmthDrawn(s), gained: sumOf(into), drawn: sumOf(outOf) };
}

/** What is seen of a use: of the battery of the living part the fall only, since nobody writes down what the sun gave. */
function use(store: ReadableStore, into: Float64Array, outOf: Float64Array): Float64Array {
  if (store === "battery12") return outOf.map((out, i) => out - into[i]!);
  return (STORES[store].trouble === "full" ? into : outOf).slice();
}

function sumOf(values: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum;
}
