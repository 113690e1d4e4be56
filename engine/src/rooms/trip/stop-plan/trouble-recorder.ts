import { indexOf } from "../../../stores/ensemble.ts";
import { STORES, type StoreId } from "../../../stores/stores.ts";
import type { LiveState, Recorder } from "../live-trip.ts";
import { TROUBLE_SHARE } from "../record-trip.ts";

interface Watched {
  readonly store: StoreId;
  readonly s: number;
  readonly isFullTrouble: boolean;
  /** 1 for a life in which the store was in trouble */
  readonly met: Uint8Array;
}

/** Only what the search asks: whether each store was in trouble in each life, and how cold the cabin became. */
export class TroubleRecorder implements Recorder {
  private readonly watched: readonly Watched[];
  private readonly coldest: Float64Array;

  /** @param arriving called on arriving at a stop, before anything is done there */
  constructor(
    tracked: readonly StoreId[],
    n: number,
    private readonly arrivals: ReadonlyMap<number, number>,
    private readonly arriving: (stop: number, live: LiveState) => void,
  ) {
    this.watched = tracked.map((store) => ({
      store,
      s: indexOf(store),
      isFullTrouble: STORES[store].trouble === "full",
      met: new Uint8Array(n),
    }));
    this.coldest = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  }

  before(step: number, live: LiveState): void {
    // first, so that what is copied is taken up where this step has not been looked at yet
    const stop = this.arrivals.get(step);
    if (stop !== undefined) this.arriving(stop, live);
    const { ensemble, cabinC } = live;
    for (let k = 0; k < this.watched.length; k++) {
      const { s, isFullTrouble, met } = this.watched[k]!;
      const level = ensemble.level[s]!;
      const capacity = ensemble.capacity[s]![0]!;
      const edge = (isFullTrouble ? 1 - TROUBLE_SHARE : TROUBLE_SHARE) * capacity;
      if (isFullTrouble) {
        for (let i = 0; i < met.length; i++) if (level[i]! >= edge) met[i] = 1;
      } else {
        for (let i = 0; i < met.length; i++) if (level[i]! <= edge) met[i] = 1;
      }
    }
    const { coldest } = this;
    for (let i = 0; i < cabinC.length; i++) if (cabinC[i]! < coldest[i]!) coldest[i] = cabinC[i]!;
  }

  after(): void {}

  chances(): ReadonlyMap<StoreId, number> {
    return new Map(
      this.watched.map(({ store, met }) => [store, met.reduce((sum, one) => sum + one, 0) / met.length]),
    );
  }

  /** Share of the lives in which the cabin was colder than this at some time. */
  chanceColder(celsius: number): number {
    return this.coldest.filter((least) => least < celsius).length / this.coldest.length;
  }

  copy(): { readonly met: readonly Uint8Array[]; readonly coldest: Float64Array } {
    return { met: this.watched.map(({ met }) => met.slice()), coldest: this.coldest.slice() };
  }

  restore({ met, coldest }: ReturnType<TroubleRecorder["copy"]>): void {
    this.watched.forEach((one, k) => {
      one.met.set(met[k]!);
    });
    this.coldest.set(coldest);
  }
}
