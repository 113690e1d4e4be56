import { fillAll } from "./fill-all.ts";
import { STORE_IDS, STORES, type StoreId } from "./stores.ts";

const COUNT = STORE_IDS.length;
const SUPPLIES = STORE_IDS.flatMap((id, s) => (STORES[id].kind === "supply" ? [s] : []));
/** Index of a store in the arrays of an {@link Ensemble}, its place in STORE_IDS. Cases and no table: a name that stands in the code then costs nothing. */
export function indexOf(store: StoreId): number {
  switch (store) {
    case "battery12":
      return 0;
    case "mains230":
      return 1;
    case "inverter230":
      return 2;
    case "engine12":
      return 3;
    case "lpg":
      return 4;
    case "freshWater":
      return 5;
    case "wasteWater":
      return 6;
    case "cassette":
      return 7;
    case "fuel":
      return 8;
    case "def":
      return 9;
    case "cabinHeat":
      return 10;
    case "hotWaterHeat":
      return 11;
    case "heaterWater":
      return 12;
    case "starterBattery":
      return 13;
    case "tractionBattery":
      return 14;
  }
}

/**
 * All the stores of N lives of one trip, over typed arrays indexed [store][life], in the unit of the store.
 * `floor` and `ceil` bound the level within the step; `into` and `outOf` add up over the trip for the audit.
 */
export interface Ensemble {
  readonly n: number;
  readonly present: readonly boolean[];
  readonly supply: readonly boolean[];
  /** 1 for a supply into which something has flowed in this step */
  readonly supplied: Uint8Array;
  readonly level: readonly Float64Array[];
  readonly capacity: readonly Float64Array[];
  readonly first: readonly Float64Array[];
  readonly atStart: readonly Float64Array[];
  readonly floor: readonly Float64Array[];
  readonly ceil: readonly Float64Array[];
  readonly into: readonly Float64Array[];
  readonly outOf: readonly Float64Array[];
  readonly scratchA: Float64Array;
  readonly scratchB: Float64Array;
}

export interface StoreAtStart {
  readonly capacity: number;
  readonly level: number;
}

/** Makes the stores of N lives; a store that nothing holds is absent: needs of it cannot be met, what is given to it is gone. */
export function createEnsemble(n: number, held: ReadonlyMap<StoreId, StoreAtStart>): Ensemble {
  const arrays = (fill: (store: StoreId) => number): Float64Array[] =>
    STORE_IDS.map((store) => new Float64Array(n).fill(fill(store)));
  const zero = () => arrays(() => 0);
  const capacity = (store: StoreId) =>
    STORES[store].kind === "supply" ? 1e12 : (held.get(store)?.capacity ?? 0);
  const level = (store: StoreId) => held.get(store)?.level ?? 0;
  return {
    n,
    present: STORE_IDS.map((store) => STORES[store].kind === "supply" || held.has(store)),
    supply: STORE_IDS.map((store) => STORES[store].kind === "supply"),
    supplied: new Uint8Array(COUNT),
    level: arrays(level),
    capacity: arrays(capacity),
    first: arrays(level),
    atStart: arrays(level),
    floor: zero(),
    ceil: arrays(capacity),
    into: zero(),
    outOf: zero(),
    scratchA: new Float64Array(n),
    scratchB: new Float64Array(n),
  };
}

/** Begins a step: supplies start empty. */
export function beginStep(e: Ensemble): void {
  for (let k = 0; k < SUPPLIES.length; k++) {
    const s = SUPPLIES[k]!;
    if (e.supplied[s] === 0) continue;
    e.supplied[s] = 0;
    fillAll(e.level[s]!, 0);
  }
}

/** Remembers the levels of one store as they are at the start of the step. */
export function rememberStart(e: Ensemble, store: number): void {
  const level = e.level[store]!;
  const start = e.atStart[store]!;
  for (let i = 0; i < level.length; i++) start[i] = level[i]!;
}

/** Bounds the level of one store from below within the step, by the most that may be drawn. */
export function boundOut(e: Ensemble, store: number, mostOut: Float64Array): void {
  const level = e.level[store]!;
  const floor = e.floor[store]!;
  for (let i = 0; i < level.length; i++) {
    const low = level[i]! - mostOut[i]!;
    floor[i] = Math.max(low, 0);
  }
}

/** Bounds the level of one store from above within the step, by the most that may be taken in. */
export function boundIn(e: Ensemble, store: number, mostIn: Float64Array): void {
  const level = e.level[store]!;
  const capacity = e.capacity[store]!;
  const ceil = e.ceil[store]!;
  for (let i = 0; i < level.length; i++) {
    const high = level[i]! + mostIn[i]!;
    const full = capacity[i]!;
    ceil[i] = Math.min(high, full);
  }
}

/** Books the own loss of a store at the end of a step (negative: a gain), never past empty or full; adds it up in `lost`. */
export function bookLoss(e: Ensemble, store: number, loss: Float64Array, lost: Float64Array): void {
  const level = e.level[store]!;
  const capacity = e.capacity[store]!;
  const into = e.into[store]!;
  const outOf = e.outOf[store]!;
  let total = 0;
  for (let i = 0; i < e.n; i++) {
    const before = level[i]!;
    let after = before - loss[i]!;
    if (after < 0) after = 0;
    else if (after > capacity[i]!) after = capacity[i]!;
    level[i] = after;
    const gone = before - after;
    if (gone >= 0) outOf[i] = outOf[i]! + gone;
    else into[i] = into[i]! - gone;
    total += gone;
  }
  lost[store] = lost[store]! + total;
}

/** Sets a level from outside (filled, emptied, read on the panel) and books the difference. */
export function setLevel(e: Ensemble, store: number, i: number, to: number): void {
  const level = e.level[store]!;
  const bounded = Math.min(Math.max(to, 0), e.capacity[store]![i]!);
  const change = bounded - level[i]!;
  if (change >= 0) e.into[store]![i] = e.into[store]![i]! + change;
  else e.outOf[store]![i] = e.outOf[store]![i]! - change;
  level[i] = bounded;
  if (e.supply[store]) e.supplied[store] = 1;
}

/** What all stores hold, and all that went in and out so far, in one copy. */
export function copyStores(e: Ensemble): Float64Array {
  const copy = new Float64Array(3 * COUNT * e.n);
  const rows = [...e.level, ...e.into, ...e.outOf];
  rows.forEach((row, k) => {
    copy.set(row, k * e.n);
  });
  return copy;
}

/** Puts back what {@link copyStores} has copied, into stores of as many lives. */
export function restoreStores(e: Ensemble, copy: Float64Array): void {
  const rows = [...e.level, ...e.into, ...e.outOf];
  rows.forEach((row, k) => {
    row.set(copy.subarray(k * e.n, (k + 1) * e.n));
  });
  // what was left in a supply is gone when the step begins
  for (let s = 0; s < COUNT; s++) if (e.supply[s]) e.supplied[s] = 1;
}

/**
 * Largest |in − out − change| of any life, relative to the most that moved or stood in it. A store that
 * balances gives rounding error only.
 */
export function residual(e: Ensemble, store: number): number {
  let worst = 0;
  for (let i = 0; i < e.n; i++) {
    const change = e.level[store]![i]! - e.first[store]![i]!;
    const gap = Math.abs(e.into[store]![i]! - e.outOf[store]![i]! - change);
    const scale = Math.max(e.into[store]![i]!, e.outOf[store]![i]!, e.first[store]![i]!, 1e-9);
    worst = Math.max(worst, gap / scale);
  }
  return worst;
}
