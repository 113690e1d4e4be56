import { indexOf } from "../../../stores/ensemble.ts";
import { STORES, type StoreId } from "../../../stores/stores.ts";
import type { LiveState, Recorder } from "../live-trip.ts";
import { TROUBLE_SHARE } from "../record-trip.ts";

/** Of each store and life: share left at the tightest hour, and the step of the first trouble. */
export class StoreWatch implements Recorder {
  private readonly watched: readonly {
    readonly store: StoreId;
    readonly index: number;
    readonly isFull: boolean;
    /** of the capacity: left where empty is the trouble, room where full is */
    readonly least: Float64Array;
    readonly troubleStep: Float64Array;
  }[];

  constructor(stores: readonly StoreId[], n: number) {
    this.watched = stores.map((store) => ({
      store,
      index: indexOf(store),
      isFull: STORES[store].trouble === "full",
      least: new Float64Array(n).fill(1),
      troubleStep: new Float64Array(n).fill(Number.POSITIVE_INFINITY),
    }));
  }

  before(step: number, { ensemble }: LiveState): void {
    for (const { index, isFull, least, troubleStep } of this.watched) {
      const level = ensemble.level[index]!;
      const capacity = ensemble.capacity[index]!;
      for (let i = 0; i < least.length; i++) {
        const share = level[i]! / capacity[i]!;
        const left = isFull ? 1 - share : share;
        if (left < least[i]!) least[i] = left;
        if (left <= TROUBLE_SHARE && step < troubleStep[i]!) troubleStep[i] = step;
      }
    }
  }

  after(): void {}

  of(store: StoreId): { readonly least: Float64Array; readonly troubleStep: Float64Array } {
    const found = this.watched.find((one) => one.store === store);
    if (found === undefined) throw new RangeError(`tornado: ${store} is not watched`);
    return found;
  }
}
