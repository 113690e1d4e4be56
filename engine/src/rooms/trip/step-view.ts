import { keyedNormal, purposeKey } from "../../base/random.ts";
import type { Cabin } from "../../stores/cabin.ts";
import { type Ensemble, indexOf } from "../../stores/ensemble.ts";
import type { StoreId } from "../../stores/stores.ts";
import type { Keeping, StepView } from "../../systems/contract.ts";
import type { Without } from "./without.ts";

/** The part of a need that what is there can meet, 0 to 1; all of nothing. */
function partOf(there: number, need: number): number {
  if (there >= need) return 1;
  return there > 0 ? there / need : 0;
}

const NONE_FIXED: ReadonlyMap<string, number> = new Map();

/** What all systems see of one step; filled anew for each. */
export class SharedStep {
  hour = 0;
  clockH = 0;
  day = 0;
  driving = false;
  distanceKm = 0;
  people = 0;
  postAmperes = 0;
  readonly outsideC: Float64Array;
  readonly irradianceWm2: Float64Array;
  readonly cabinC: Float64Array;
  without: readonly Without[] = [];
  /** how far stores go down whose drawing costs more than itself */
  drawing: ReadonlyMap<StoreId, NonNullable<Keeping["shareDown"]>> = new Map();
  /** sum over the lives of what heating has drawn so far of a store by its index, in its unit */
  warmthDrawn: (store: number) => number = () => 0;

  constructor(
    readonly ensemble: Ensemble,
    readonly dtH: number,
    readonly cabin: Cabin,
    readonly seed: number,
    readonly spread: boolean,
    /** draws of the trip that are the same in every life, by `system.purpose`: standard normal */
    readonly fixed: ReadonlyMap<string, number> = NONE_FIXED,
  ) {
    const { n } = ensemble;
    this.outsideC = new Float64Array(n);
    this.irradianceWm2 = new Float64Array(n);
    this.cabinC = new Float64Array(n);
  }
}

/** The step as one system sees it: its draws are keyed by its own id, so that no other system shifts them. */
export class SystemView implements StepView {
  private readonly byDay = new Map<
    string,
    { readonly normal: Float64Array; readonly key: number; day: number }
  >();
  private readonly byTrip = new Map<string, Float64Array>();

  constructor(
    private readonly step: SharedStep,
    private readonly system: string,
    /** spread of this system's draws: 1, or wider after a reading that the forecast did not expect */
    private readonly width: number,
  ) {}

  get n(): number {
    return this.step.ensemble.n;
  }
  get dtH(): number {
    return this.step.dtH;
  }
  get hour(): number {
    return this.step.hour;
  }
  /** at the middle of the step */
  get clockH(): number {
    return this.step.clockH;
  }
  get day(): number {
    return this.step.day;
  }
  get driving(): boolean {
    return this.step.driving;
  }
  get distanceKm(): number {
    return this.step.distanceKm;
  }
  get people(): number {
    return this.step.people;
  }
  get postAmperes(): number {
    return this.step.postAmperes;
  }
  get outsideC(): Float64Array {
    return this.step.outsideC;
  }
  get irradianceWm2(): Float64Array {
    return this.step.irradianceWm2;
  }
  get cabinC(): Float64Array {
    return this.step.cabinC;
  }

  level(store: StoreId): Float64Array {
    return this.step.ensemble.level[indexOf(store)]!;
  }
  startLevel(store: StoreId): Float64Array {
    return this.step.ensemble.atStart[indexOf(store)]!;
  }
  capacity(store: StoreId): Float64Array {
    return this.step.ensemble.capacity[indexOf(store)]!;
  }
  shareDown(store: StoreId, need: Float64Array, floor: number, share: Float64Array): void {
    const drawing = this.step.drawing.get(store);
    if (drawing !== undefined) {
      drawing(this, need, floor, share);
      return;
    }
    const level = this.level(store);
    const capacity = this.capacity(store);
    for (let i = 0; i < share.length; i++) share[i] = partOf(level[i]! - floor * capacity[i]!, need[i]!);
  }
  cabinMiddleC(out: Float64Array): void {
    this.step.cabin.middle(this.step.outsideC, this.step.cabinC, out);
  }
  heatToReach(setC: Float64Array, out: Float64Array): void {
    this.step.cabin.heatToReach(setC, this.step.outsideC, this.step.cabinC, out);
  }
  heatToHold(setC: Float64Array, out: Float64Array): void {
    this.step.cabin.heatToHold(setC, this.step.outsideC, out);
  }

  dayNormal(purpose: string): Float64Array {
    let entry = this.byDay.get(purpose);
    if (entry === undefined) {
      entry = { normal: new Float64Array(this.n), key: purposeKey(`${this.system}.${purpose}.day`), day: -1 };
      this.byDay.set(purpose, entry);
    }
    if (entry.day !== this.day) {
      entry.day = this.day;
      this.fill(entry.normal, this.day, entry.key);
    }
    return entry.normal;
  }

  tripNormal(purpose: string): Float64Array {
    let normal = this.byTrip.get(purpose);
    if (normal === undefined) {
      normal = new Float64Array(this.n);
      const fixed = this.step.fixed.get(`${this.system}.${purpose}`);
      if (fixed === undefined) this.fill(normal, 0, purposeKey(`${this.system}.${purpose}.trip`));
      else normal.fill(this.width * fixed);
      this.byTrip.set(purpose, normal);
    }
    return normal;
  }

  /** purposes for which something was drawn once per trip, so far */
  get drawnPerTrip(): readonly string[] {
    return [...this.byTrip.keys()];
  }

  private fill(normal: Float64Array, day: number, key: number): void {
    if (!this.step.spread) return;
    for (let i = 0; i < normal.length; i++) normal[i] = this.width * keyedNormal(this.step.seed, i, day, key);
  }
}
