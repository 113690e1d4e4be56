import type { Mode, Running } from "../systems/contract.ts";
import { type Ensemble, indexOf } from "./ensemble.ts";

/** A mode with its stores looked up; gives to stores that the vehicle does not have are dropped. */
interface CompiledMode {
  readonly limit: Float64Array;
  readonly needStores: readonly number[];
  readonly needs: readonly Float64Array[];
  readonly giveStores: readonly number[];
  readonly gives: readonly Float64Array[];
}

export interface CompiledRunning {
  readonly running: Running;
  readonly modes: readonly CompiledMode[];
  /** sums over lives and steps by store, for the shares of use */
  readonly drawSum: Float64Array;
  readonly giveSum: Float64Array;
}

/** Looks the stores of a running system up once. A mode that needs an absent store can never run and is left out. */
export function compileRunning(running: Running, e: Ensemble): CompiledRunning {
  const possible = (mode: Mode) => mode.needStores.every((store) => e.present[indexOf(store)]);
  return {
    running,
    modes: running.modes.filter(possible).map((mode) => {
      const kept = mode.giveStores.map((_, k) => k).filter((k) => e.present[indexOf(mode.giveStores[k]!)]);
      return {
        limit: mode.limit,
        needStores: mode.needStores.map(indexOf),
        needs: mode.needs,
        giveStores: kept.map((k) => indexOf(mode.giveStores[k]!)),
        gives: kept.map((k) => mode.gives[k]!),
      };
    }),
    drawSum: new Float64Array(e.level.length),
    giveSum: new Float64Array(e.level.length),
  };
}

/**
 * Settles one system for one step: each mode in its order takes, per life, the activity
 * min(demand left, its limit, what the stores it needs can yield, what the stores it gives to have room for).
 */
export function settleRunning(compiled: CompiledRunning, e: Ensemble): void {
  const { left, activity, n } = e;
  left.set(compiled.running.demand);
  for (const mode of compiled.modes) {
    if (!wish(left, mode.limit, activity, n)) continue;
    for (let k = 0; k < mode.needs.length; k++) {
      const s = mode.needStores[k]!;
      boundByNeed(activity, mode.needs[k]!, e.level[s]!, e.floor[s]!, n);
    }
    for (let k = 0; k < mode.gives.length; k++) {
      const s = mode.giveStores[k]!;
      if (!e.supply[s]) boundByRoom(activity, mode.gives[k]!, e.level[s]!, e.ceil[s]!, n);
    }
    for (let k = 0; k < mode.needs.length; k++) {
      const s = mode.needStores[k]!;
      const sum = take(activity, mode.needs[k]!, e.level[s]!, e.floor[s]!, e.outOf[s]!, e.drawing[s]!, n);
      compiled.drawSum[s] = compiled.drawSum[s]! + sum;
    }
    for (let k = 0; k < mode.gives.length; k++) {
      const s = mode.giveStores[k]!;
      const sum = give(activity, mode.gives[k]!, e.level[s]!, e.ceil[s]!, e.into[s]!, n);
      compiled.giveSum[s] = compiled.giveSum[s]! + sum;
    }
    for (let i = 0; i < n; i++) left[i] = left[i]! - activity[i]!;
  }
}

/** Activity wished for, before the stores speak; false when no life wishes any. */
function wish(left: Float64Array, limit: Float64Array, activity: Float64Array, n: number): boolean {
  let most = 0;
  for (let i = 0; i < n; i++) {
    const wanted = left[i]!;
    const allowed = limit[i]!;
    let a = wanted < allowed ? wanted : allowed;
    if (!(a > 0)) a = 0;
    activity[i] = a;
    if (a > most) most = a;
  }
  return most > 0;
}

function boundByNeed(
  activity: Float64Array,
  need: Float64Array,
  level: Float64Array,
  floor: Float64Array,
  n: number,
): void {
  for (let i = 0; i < n; i++) {
    const available = level[i]! - floor[i]!;
    if (activity[i]! * need[i]! > available) activity[i] = available > 0 ? available / need[i]! : 0;
  }
}

function boundByRoom(
  activity: Float64Array,
  gift: Float64Array,
  level: Float64Array,
  ceil: Float64Array,
  n: number,
): void {
  for (let i = 0; i < n; i++) {
    const room = ceil[i]! - level[i]!;
    if (activity[i]! * gift[i]! > room) activity[i] = room > 0 ? room / gift[i]! : 0;
  }
}

function take(
  activity: Float64Array,
  need: Float64Array,
  level: Float64Array,
  floor: Float64Array,
  outOf: Float64Array,
  drawing: Float64Array,
  n: number,
): number {
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const before = level[i]!;
    let after = before - activity[i]! * need[i]!;
    // rounding only: the activity was bounded by what is there
    if (after < floor[i]! && before >= floor[i]!) after = floor[i]!;
    const amount = before - after;
    level[i] = after;
    outOf[i] = outOf[i]! + amount;
    drawing[i] = drawing[i]! + amount;
    sum += amount;
  }
  return sum;
}

function give(
  activity: Float64Array,
  gift: Float64Array,
  level: Float64Array,
  ceil: Float64Array,
  into: Float64Array,
  n: number,
): number {
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const before = level[i]!;
    let after = before + activity[i]! * gift[i]!;
    if (after > ceil[i]! && before <= ceil[i]!) after = ceil[i]!;
    const amount = after - before;
    level[i] = after;
    into[i] = into[i]! + amount;
    sum += amount;
  }
  return sum;
}
