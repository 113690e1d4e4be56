import { BadInput } from "../../base/bad-input.ts";
import type { TripWeather } from "../../climate/trip-weather.ts";
import { indexOf } from "../../stores/ensemble.ts";
import { STORE_IDS, type StoreId } from "../../stores/stores.ts";
import type { Restart } from "./do-acts.ts";
import { type LiveState, liveTrip, type Recorder } from "./live-trip.ts";
import type { TripPlan } from "./plan-trip.ts";
import { SpreadOf } from "./spread-of.ts";
import { READING_UNITS, type Reading } from "./types.ts";

/** under this share of the lives, a reading is one that the forecast did not expect */
const LEAST_EFFECTIVE = 1 / 5;
/** standard deviations between reading and lives beyond which they do not speak of the same trip */
const FAR_SD = 2;
/** no gauge is better than this share of the capacity */
const LEAST_SD_SHARE = 0.01;
/** too few lives to weigh: the store always restarts */
const LEAST_RUNS = 20;

interface Read {
  readonly store: StoreId;
  readonly at: string;
  readonly unit: string;
  readonly step: number;
  readonly level: number;
  readonly sd: number;
  /** as stated, or by default of the unit, however small */
  readonly statedSd: number;
}

export interface WeighedReading extends Read {
  readonly expectedP50: number;
  readonly how: "weighted" | "restarted";
  readonly effective: number;
}

export interface Weighed {
  /** add up to 1; null where no reading was weighed */
  readonly weights: Float64Array | null;
  readonly restarts: readonly Restart[];
  readonly readings: readonly WeighedReading[];
  /** step of the latest reading; null without one */
  readonly latest: number | null;
}

/**
 * Weighs every life by how well it agrees with what was read (normal error). Where fewer than a fifth of the
 * lives would still count (effective sample 1 / Σw²), or where the reading is far from all of them, the store
 * restarts from the reading instead.
 */
export function weighReadings(plan: TripPlan, readings: readonly Reading[], weather: TripWeather): Weighed {
  const reads = readings.map((reading, index) => readLevel(plan, reading, index)).sort(byTimeThenStore);
  let restarts: readonly Restart[] = [];
  // each round adds one restart, so there are at most as many rounds as readings
  for (;;) {
    const kept = keepLevels(plan, reads, restarts, weather);
    const round = weighOnce(plan, reads, restarts, kept);
    if (round.surprise === null)
      return {
        weights: round.weights,
        restarts,
        readings: round.readings,
        latest: reads.at(-1)?.step ?? null,
      };
    const { store, step, level, sd } = round.surprise;
    restarts = [...restarts, { store, step, level, sd }];
  }
}

/** One order, however they were handed in. */
function byTimeThenStore(a: Read, b: Read): number {
  return a.step - b.step || STORE_IDS.indexOf(a.store) - STORE_IDS.indexOf(b.store);
}

export function readLevel(
  { input, systems, tracked, timeline }: TripPlan,
  reading: Reading,
  index: number,
): Read {
  const path = `readings.${index}`;
  if (reading.at < input.trip.depart || reading.at > input.trip.return) {
    throw new BadInput([
      {
        path: `${path}.at`,
        expected: `expected a time within the trip, ${input.trip.depart} to ${input.trip.return}`,
      },
    ]);
  }
  const holder = systems.find(({ shares }) => shares.some(({ store }) => store === reading.store));
  const share = holder?.shares.find(({ store }) => store === reading.store);
  if (holder === undefined || share === undefined || !tracked.includes(reading.store)) {
    throw new BadInput([
      { path: `${path}.store`, expected: `expected a store of this vehicle: ${tracked.join(", ")}` },
    ]);
  }
  const meaning = (unit: string) =>
    holder.physics.read?.(holder.spec, reading.value, unit, reading.sd ?? null) ?? null;
  const level = meaning(reading.unit);
  if (level === null) {
    const units = READING_UNITS.filter((unit) => meaning(unit) !== null);
    throw new BadInput([
      { path: `${path}.unit`, expected: `expected one of ${units.join(", ")} for this store` },
    ]);
  }
  return {
    store: reading.store,
    at: reading.at,
    unit: reading.unit,
    step: timeline.stepAt(reading.at),
    level: level.level,
    sd: Math.max(level.sd, LEAST_SD_SHARE * share.capacity),
    statedSd: level.sd,
  };
}

const keyOf = ({ store, step }: { readonly store: StoreId; readonly step: number }) => `${store}@${step}`;

/** Lives the trip up to the latest reading and keeps what the read stores held at the hours of the readings. */
function keepLevels(
  { input, systems, timeline, people }: TripPlan,
  reads: readonly Read[],
  restarts: readonly Restart[],
  weather: TripWeather,
): ReadonlyMap<string, Float64Array> {
  const kept = new Map<string, Float64Array>();
  const until = reads.at(-1)?.step;
  if (until === undefined) return kept;
  const recorder: Recorder = {
    before: (step, live: LiveState) => {
      for (const read of reads) {
        if (read.step === step) kept.set(keyOf(read), live.ensemble.level[indexOf(read.store)]!.slice());
      }
    },
    after: () => undefined,
  };
  const { runs, seed, spread } = input;
  const options = { runs, people, seed, spread, restarts, weather, until };
  liveTrip(input.vehicle, systems, input.trip, timeline, options, recorder);
  return kept;
}

function weighOnce(
  { input }: TripPlan,
  reads: readonly Read[],
  restarts: readonly Restart[],
  kept: ReadonlyMap<string, Float64Array>,
): { weights: Float64Array | null; readings: WeighedReading[]; surprise: Read | null } {
  const { runs, spread } = input;
  let weights: Float64Array | null = null;
  const readings: WeighedReading[] = [];
  for (const read of reads) {
    const levels = kept.get(keyOf(read))!;
    const [expectedP50] = new SpreadOf(runs, weights).quantiles(levels, [0.5]);
    if (restarts.some((restart) => keyOf(restart) === keyOf(read))) {
      readings.push({
        ...read,
        expectedP50: expectedP50!,
        how: "restarted",
        effective: effective(weights, runs),
      });
      continue;
    }
    const next: Float64Array | null = isFarFrom(levels, read, weights)
      ? null
      : weighBy(levels, read, weights);
    const left = next === null ? 0 : effective(next, runs);
    if (!spread || runs < LEAST_RUNS || left < runs * LEAST_EFFECTIVE)
      return { weights, readings, surprise: read };
    weights = next;
    readings.push({ ...read, expectedP50: expectedP50!, how: "weighted", effective: left });
  }
  return { weights, readings, surprise: null };
}

/**
 * True where the reading is further from the lives' mean than their spread and its own error together explain.
 * Lives that all hold the same weigh the same however wrong they are, so the effective sample alone cannot tell.
 */
function isFarFrom(levels: Float64Array, { level, sd }: Read, weights: Float64Array | null): boolean {
  const share = (i: number) => (weights === null ? 1 / levels.length : weights[i]!);
  const mean = levels.reduce((sum, value, i) => sum + share(i) * value, 0);
  const variance = levels.reduce((sum, value, i) => sum + share(i) * (value - mean) ** 2, 0);
  return Math.abs(level - mean) > FAR_SD * Math.sqrt(variance + sd * sd);
}

/** Weights times the normal likelihood of the reading; null where no life comes near it. */
function weighBy(
  levels: Float64Array,
  { level, sd }: Read,
  before: Float64Array | null,
): Float64Array | null {
  const weights = levels.map(
    (value, i) => (before === null ? 1 : before[i]!) * Math.exp(-0.5 * ((value - level) / sd) ** 2),
  );
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return sum > 1e-300 ? weights.map((weight) => weight / sum) : null;
}

function effective(weights: Float64Array | null, runs: number): number {
  return weights === null ? runs : 1 / weights.reduce((sum, weight) => sum + weight * weight, 0);
}
