import type { Mode, Running } from "../systems/contract.ts";
import { type Ensemble, indexOf } from "./ensemble.ts";
import { type CompiledMode, type Port, settleMode, shapeOf } from "./settle-mode.ts";

export interface CompiledRunning {
  readonly running: Running;
  readonly prepare: Running["prepare"];
  readonly demand: Float64Array;
  /** whether anything is wanted in this step that is not met yet */
  isWanted: boolean;
  readonly modes: readonly CompiledMode[];
  /** sums over lives and steps by store, for the shares of use */
  readonly drawSum: Float64Array;
  readonly giveSum: Float64Array;
  /** activity of this step by life, where the system makes its supply on demand */
  readonly granted: Float64Array | null;
}

/**
 * Looks the stores of a running system up once. A mode that needs an absent store can never run and is left
 * out; gives to an absent store are dropped. A mode has at most two needs and one give that count.
 */
export function compileRunning(running: Running, e: Ensemble): CompiledRunning {
  const possible = (mode: Mode) => mode.needStores.every((store) => e.present[indexOf(store)]);
  return {
    running,
    prepare: running.prepare,
    demand: running.demand,
    isWanted: true,
    modes: running.modes.filter(possible).map((mode) => compileMode(mode, e)),
    drawSum: new Float64Array(e.level.length),
    giveSum: new Float64Array(e.level.length),
    granted: running.onDemand === true ? new Float64Array(e.n) : null,
  };
}

function compileMode(mode: Mode, e: Ensemble): CompiledMode {
  const gives = mode.giveStores.map((_, k) => k).filter((k) => e.present[indexOf(mode.giveStores[k]!)]);
  if (mode.needStores.length > 2 || gives.length > 1) {
    throw new RangeError(`mode ${mode.id}: at most two needs and one give`);
  }
  const needs = mode.needStores.map((store, k) => needPort(e, indexOf(store), mode.needs[k]!));
  const given = gives[0];
  const first = needs[0] ?? NO_PORT;
  const second = needs[1] ?? NO_PORT;
  const gift =
    given === undefined
      ? noGift(e.n, needs.length)
      : givePort(e, indexOf(mode.giveStores[given]!), mode.gives[given]!);
  const supplyOf = ({ store }: Port) => (store >= 0 && e.supply[store]! ? store : -1);
  return {
    shape: shapeOf(first, second, gift),
    limit: mode.limit,
    first,
    second,
    gift,
    firstSupply: supplyOf(first),
    secondSupply: supplyOf(second),
    givenSupply: supplyOf(gift),
  };
}

function needPort(e: Ensemble, store: number, amount: Float64Array): Port {
  const [level, bound, booked] = [e.level[store]!, e.floor[store]!, e.outOf[store]!];
  return { store, amount, level, bound, booked };
}

function givePort(e: Ensemble, store: number, amount: Float64Array): Port {
  const [level, bound, booked] = [e.level[store]!, e.ceil[store]!, e.into[store]!];
  return { store, amount, level, bound, booked };
}

const NONE = new Float64Array(0);
/** stands where a mode has no port: its loop does not look at it */
const NO_PORT: Port = { store: -1, amount: NONE, level: NONE, bound: NONE, booked: NONE };

/** The loop of two needs looks at the give as well: one that never binds stands in for it where there is none. */
function noGift(n: number, needs: number): Port {
  if (needs < 2) return NO_PORT;
  const zero = new Float64Array(n);
  return {
    store: -1,
    amount: zero,
    level: new Float64Array(n),
    bound: new Float64Array(n).fill(1),
    booked: zero,
  };
}

/**
 * Settles one system for one step: each mode in its order takes, per life, the activity
 * min(demand left, its limit, what the stores it needs can yield, what the store it gives to has room for).
 */
export function settleRunning(compiled: CompiledRunning, e: Ensemble): void {
  if (!compiled.isWanted) return;
  // what cannot be met stays in the demand, so that a system may be settled again later in the step
  const { demand: left, modes, drawSum, giveSum, granted } = compiled;
  const { n, supplied } = e;
  if (granted !== null) for (let i = 0; i < n; i++) granted[i] = granted[i]! + left[i]!;
  for (let k = 0; k < modes.length && compiled.isWanted; k++) {
    const mode = modes[k]!;
    // a supply into which nothing has flowed in this step yields nothing to any life
    if (mode.firstSupply >= 0 && supplied[mode.firstSupply] === 0) continue;
    if (mode.secondSupply >= 0 && supplied[mode.secondSupply] === 0) continue;
    if (mode.givenSupply >= 0) supplied[mode.givenSupply] = 1;
    compiled.isWanted = settleMode(left, mode, n, drawSum, giveSum);
  }
  if (granted !== null) for (let i = 0; i < n; i++) granted[i] = granted[i]! - left[i]!;
}

/**
 * End of a step: what a system on demand made and nobody took goes back, as if it had never been drawn.
 * @throws RangeError where such a system has another shape than one need and a supply that it gives to
 */
export function returnUnused(
  { running, modes, drawSum, giveSum, granted }: CompiledRunning,
  e: Ensemble,
): void {
  if (granted === null) return;
  for (const { first, second, gift } of modes) {
    if (modes.length > 1 || first.store < 0 || second.store >= 0 || !e.supply[gift.store])
      throw new RangeError(`mode ${running.modes[0]?.id}: on demand, one need and one supply`);
    for (let i = 0; i < e.n; i++) {
      const made = granted[i]! * gift.amount[i]!;
      const unused = Math.min(gift.level[i]!, made);
      if (!(unused > 0)) continue;
      const back = granted[i]! * first.amount[i]! * (unused / made);
      gift.level[i] = gift.level[i]! - unused;
      gift.booked[i] = gift.booked[i]! - unused;
      first.level[i] = first.level[i]! + back;
      first.booked[i] = first.booked[i]! - back;
      drawSum[first.store] = drawSum[first.store]! - back;
      giveSum[gift.store] = giveSum[gift.store]! - unused;
    }
  }
  granted.fill(0);
}
