import { indexOf } from "../../stores/ensemble.ts";
import { STORES, type StoreId } from "../../stores/stores.ts";
import type { Mode, Running, SystemPhysics } from "../../systems/contract.ts";
import type { UseRates } from "./types.ts";

/** Factors by index of the store; null where all are 1. */
function factorsOf(rates: UseRates): ReadonlyMap<number, number> | null {
  const factors = Object.entries(rates).filter(([, rate]) => rate !== undefined && rate !== 1);
  return factors.length === 0
    ? null
    : new Map(factors.map(([store, rate]) => [indexOf(store as StoreId), rate]));
}

/** The port of a mode as measured: a copy of its own, filled after the system has prepared its. */
interface Rated {
  readonly from: Float64Array;
  readonly to: Float64Array;
  readonly factor: number;
}

/**
 * A system that uses as much of each store as was measured on the vehicle. What a mode needs of a rated store,
 * and what it puts into one whose trouble is being full, is multiplied by the rate; what it gives for it stays.
 * With no rate other than 1 the system is handed back as it is.
 */
export function rateUse<Spec>(physics: SystemPhysics<Spec>, rates: UseRates): SystemPhysics<Spec> {
  const factors = factorsOf(rates);
  const { start } = physics;
  if (factors === null || start === undefined) return physics;
  return {
    ...physics,
    start: (spec, context) => start(spec, context).map((running) => rateRunning(running, factors)),
  };
}

function rateRunning(running: Running, factors: ReadonlyMap<number, number>): Running {
  const rated: Rated[] = [];
  const port = (store: StoreId, amount: Float64Array, isUse: boolean): Float64Array => {
    const factor = factors.get(indexOf(store));
    if (factor === undefined || !isUse) return amount;
    const to = new Float64Array(amount.length);
    rated.push({ from: amount, to, factor });
    return to;
  };
  const modes = running.modes.map(
    (mode): Mode => ({
      ...mode,
      needs: mode.needStores.map((store, k) => port(store, mode.needs[k]!, true)),
      gives: mode.giveStores.map((store, k) => port(store, mode.gives[k]!, STORES[store].trouble === "full")),
    }),
  );
  if (rated.length === 0) return running;
  return {
    ...running,
    modes,
    prepare: (view) => {
      if (!running.prepare(view)) return false;
      for (const { from, to, factor } of rated) for (let i = 0; i < to.length; i++) to[i] = factor * from[i]!;
      return true;
    },
  };
}
