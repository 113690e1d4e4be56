import { type Ensemble, indexOf } from "../../stores/ensemble.ts";
import { STORES, type StoreId } from "../../stores/stores.ts";
import type { LiveState, Recorder } from "./live-trip.ts";
import type { SpreadOf } from "./spread-of.ts";
import type { Timeline } from "./timeline.ts";
import type { StoreBand } from "./types.ts";

const SHARES = [0.1, 0.5, 0.9] as const;
/** within this share of the capacity of empty or full a store is in trouble */
export const TROUBLE_SHARE = 0.005;
/** night, by the clock: coldest between these hours counts as the night of the stop */
const NIGHT_FROM_H = 21;
const NIGHT_TO_H = 9;

interface Points {
  readonly p10: Float64Array;
  readonly p50: Float64Array;
  readonly p90: Float64Array;
  /** the values of the lives at the last point: most stores stand still at night, and are then not put in order again */
  readonly last: Float64Array;
}
function points(n: number, marks: number): Points {
  const p50 = new Float64Array(marks);
  // one life alone has one line
  const [p10, p90] = n === 1 ? [p50, p50] : [new Float64Array(marks), new Float64Array(marks)];
  return { p10, p50, p90, last: new Float64Array(n) };
}

export interface LevelAt {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** What one store did, over the lives. */
export class StoreRecord {
  readonly band: Points;
  /** hour of the first trouble; infinite where it never came */
  readonly troubleH: Float64Array;
  /** mean over the lives of all that was used by each hour: drawn, or for waste and cassette put in */
  readonly used: Float64Array;
  readonly arrive: LevelAt[] = [];
  readonly leave: (LevelAt | null)[] = [];
  readonly index: number;
  readonly isFullTrouble: boolean;
  /** level at which trouble begins; known once a trip is watched */
  private edge = 0;

  constructor(
    readonly store: StoreId,
    n: number,
    marks: number,
  ) {
    this.band = points(n, marks);
    this.used = new Float64Array(marks);
    this.index = indexOf(store);
    this.isFullTrouble = STORES[store].trouble === "full";
    this.troubleH = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  }

  begin({ capacity }: Ensemble): void {
    this.edge = (this.isFullTrouble ? 1 - TROUBLE_SHARE : TROUBLE_SHARE) * capacity[this.index]![0]!;
  }

  /** Notes the hour in each life that is in trouble for the first time. */
  watch(level: Float64Array, hour: number): void {
    const { edge, isFullTrouble, troubleH } = this;
    if (isFullTrouble) {
      for (let i = 0; i < level.length; i++) if (level[i]! >= edge && hour < troubleH[i]!) troubleH[i] = hour;
    } else {
      for (let i = 0; i < level.length; i++) if (level[i]! <= edge && hour < troubleH[i]!) troubleH[i] = hour;
    }
  }
}

/** Watches a trip being lived: bands each hour, levels at stops, first trouble, cold nights. */
export class TripRecorder implements Recorder {
  readonly hours: number[] = [];
  readonly outside: Points;
  readonly cabin: Points;
  readonly stores: readonly StoreRecord[];
  readonly coldest: readonly Float64Array[];
  readonly cabinLeast: Float64Array;
  private hasBegun = false;
  private readonly perHour: number;
  /** index of the stop whose night the end of a step belongs to; −1 by day and on the road */
  private readonly nightOf: Int16Array;
  /** 1 where somebody arrives at a stop or leaves one */
  private readonly isEdge: Uint8Array;

  constructor(
    tracked: readonly StoreId[],
    private readonly timeline: Timeline,
    readonly spread: SpreadOf,
    /** step of the latest reading: what was forecast for the time before is past, and trouble counts from here on */
    private readonly countsFrom: number | null = null,
  ) {
    const { n } = spread;
    this.perHour = Math.round(1 / timeline.dtH);
    const marks = Math.ceil(timeline.steps / this.perHour) + 1;
    this.outside = points(n, marks);
    this.cabin = points(n, marks);
    this.stores = tracked.map((store) => new StoreRecord(store, n, marks));
    this.coldest = timeline.stops.map(() => new Float64Array(n).fill(Number.POSITIVE_INFINITY));
    this.cabinLeast = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
    this.nightOf = nightsOf(timeline);
    this.isEdge = new Uint8Array(timeline.steps + 1);
    for (const { arrive, leave } of timeline.stops) this.isEdge[arrive] = this.isEdge[leave] = 1;
  }

  // no closures in what runs at every step: each would take memory for what it sees
  before(step: number, live: LiveState): void {
    if (!this.hasBegun) {
      this.hasBegun = true;
      for (const record of this.stores) record.begin(live.ensemble);
    }
    if (step % this.perHour === 0 || step === this.timeline.steps) this.mark(step, live);
    const hour = step * this.timeline.dtH;
    const { level } = live.ensemble;
    for (let k = 0; k < this.stores.length; k++) {
      const record = this.stores[k]!;
      record.watch(level[record.index]!, hour);
    }
    this.watchCold(step, live);
    if (this.isEdge[step] === 1) this.arriveAt(step, live);
    if (step === this.timeline.steps) {
      for (const record of this.stores) record.arrive.push(this.levelAt(record.store, live));
    }
  }

  after(step: number, live: LiveState): void {
    if (step === this.countsFrom) this.forgetBefore();
    if (this.isEdge[step] === 1) this.leaveAt(step, live);
  }

  private arriveAt(step: number, live: LiveState): void {
    this.timeline.stops.forEach(({ arrive }, stop) => {
      if (arrive === step)
        for (const record of this.stores) record.arrive[stop] = this.levelAt(record.store, live);
    });
  }

  private leaveAt(step: number, live: LiveState): void {
    this.timeline.stops.forEach(({ leave }, stop) => {
      if (leave === step)
        for (const record of this.stores) record.leave[stop] = this.levelAt(record.store, live);
    });
  }

  private forgetBefore(): void {
    for (const { troubleH } of this.stores) troubleH.fill(Number.POSITIVE_INFINITY);
    this.cabinLeast.fill(Number.POSITIVE_INFINITY);
  }

  private mark(step: number, live: LiveState): void {
    const k = this.hours.push(step * this.timeline.dtH) - 1;
    this.put(this.outside, k, live.outsideC);
    this.put(this.cabin, k, live.cabinC);
    const { level, into, outOf } = live.ensemble;
    for (let s = 0; s < this.stores.length; s++) {
      const { index, isFullTrouble, band, used } = this.stores[s]!;
      this.put(band, k, level[index]!);
      used[k] = this.spread.mean((isFullTrouble ? into : outOf)[index]!);
    }
  }

  private put({ p10, p50, p90, last }: Points, k: number, values: Float64Array): void {
    if (p10 === p90) {
      p50[k] = values[0]!;
      return;
    }
    if (!isChanged(values, last) && k > 0) {
      p10[k] = p10[k - 1]!;
      p50[k] = p50[k - 1]!;
      p90[k] = p90[k - 1]!;
      return;
    }
    const found = this.spread.read(values, SHARES);
    p10[k] = found[0]!;
    p50[k] = found[1]!;
    p90[k] = found[2]!;
  }

  private levelAt(store: StoreId, live: LiveState): LevelAt {
    const found = this.spread.read(live.ensemble.level[indexOf(store)]!, SHARES);
    return { p10: found[0]!, p50: found[1]!, p90: found[2]! };
  }

  private watchCold(step: number, { outsideC, cabinC }: LiveState): void {
    const { cabinLeast } = this;
    for (let i = 0; i < cabinC.length; i++) if (cabinC[i]! < cabinLeast[i]!) cabinLeast[i] = cabinC[i]!;
    const stop = this.nightOf[step]!;
    if (stop < 0) return;
    const least = this.coldest[stop]!;
    for (let i = 0; i < least.length; i++) if (outsideC[i]! < least[i]!) least[i] = outsideC[i]!;
  }
}

/** Whether any life has another value than at the point before, which is overwritten. */
function isChanged(values: Float64Array, last: Float64Array): boolean {
  let is = false;
  for (let i = 0; i < values.length; i++) {
    if (values[i] === last[i]) continue;
    last[i] = values[i]!;
    is = true;
  }
  return is;
}

function nightsOf({ steps, stops, clockH }: Timeline): Int16Array {
  const nights = new Int16Array(steps + 1).fill(-1);
  stops.forEach(({ arrive, leave }, stop) => {
    for (let step = arrive + 1; step <= leave; step++) {
      const clock = clockH[step - 1]!;
      if (nights[step] === -1 && (clock >= NIGHT_FROM_H || clock < NIGHT_TO_H)) nights[step] = stop;
    }
  });
  return nights;
}

/** The points as plain rounded numbers: thousandths carry no meaning and cost bytes. */
export function roundBand({ p10, p50, p90 }: Pick<Points, "p10" | "p50" | "p90">): StoreBand {
  const middle = rounded(p50);
  return {
    p10: p10 === p50 ? middle : rounded(p10),
    p50: middle,
    p90: p90 === p50 ? middle : rounded(p90),
  };
}

function rounded(values: Float64Array): number[] {
  const plain = new Array<number>(values.length);
  for (let k = 0; k < values.length; k++) plain[k] = Math.round(values[k]! * 1000) / 1000;
  return plain;
}
