import { keyedNormal, purposeKey } from "../../base/random.ts";
import { indexOf } from "../../stores/ensemble.ts";
import { STORES, type StoreId } from "../../stores/stores.ts";
import type { Mode, Running, SystemPhysics } from "../../systems/contract.ts";
import type { UseRates } from "./types.ts";

/** Measured use, and what its spread over the lives is drawn from. */
export interface RatedUse {
  readonly rates: UseRates;
  readonly seed: number;
  readonly spread: boolean;
}

/** Heating, and the waste tank for what keeps it from freezing. */
const WARMTH: ReadonlySet<string> = new Set(["heating", "wasteWater"]);
/** Whether what a kind of system draws goes by the cold, and so by a rate of its own. */
export const isWarmth = (kind: string): boolean => WARMTH.has(kind);

interface Rate {
  readonly times: number;
  readonly sd: number;
  readonly key: number;
}

/** Rates of one kind of system by index of the store; null where none differs from the description. */
function ratesByStore(kind: string, { rates, spread }: RatedUse): ReadonlyMap<number, Rate> | null {
  const found = Object.entries(rates).flatMap(([store, rate]): [number, Rate][] => {
    const sd = spread ? (rate?.sd ?? 0) : 0;
    const times = isWarmth(kind) ? (rate?.warmth ?? rate?.times) : rate?.times;
    if (times === undefined || (times === 1 && sd === 0)) return [];
    return [[indexOf(store as StoreId), { times, sd, key: purposeKey(`rate.${store}`) }]];
  });
  return found.length === 0 ? null : new Map(found);
}

/** The factor of a store in each life: the same for all systems that draw on it, whatever else is fitted. */
function factorsOf({ times, sd, key }: Rate, n: number, seed: number): Float64Array {
  return new Float64Array(n).map((_, i) => times * Math.exp(sd * keyedNormal(seed, i, 0, key)));
}

/** The port of a mode as measured: a copy of its own, filled after the system has prepared its. */
interface Rated {
  readonly from: Float64Array;
  readonly to: Float64Array;
  readonly factor: Float64Array;
}

/**
 * A system that uses as much of each store as was measured on the vehicle. What a mode needs of a rated store,
 * and what it puts into one whose trouble is being full, is multiplied by the rate; what it gives for it stays.
 * With no rate other than 1 the system is handed back as it is.
 */
export function rateUse<Spec>(
  kind: string,
  physics: SystemPhysics<Spec>,
  rated: RatedUse,
): SystemPhysics<Spec> {
  const rates = ratesByStore(kind, rated);
  const { start } = physics;
  if (rates === null || start === undefined) return physics;
  return {
    ...physics,
    start: (spec, context) => {
      const factors = new Map(
        [...rates].map(([store, rate]) => [store, factorsOf(rate, context.n, rated.seed)]),
      );
      return start(spec, context).map((running) => rateRunning(running, factors));
    },
  };
}

function rateRunning(running: Running, factors: ReadonlyMap<number, Float64Array>): Running {
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
    prepare: (view, demand) => {
      if (!running.prepare(view, demand)) return false;
      for (const { from, to, factor } of rated)
        for (let i = 0; i < to.length; i++) to[i] = factor[i]! * from[i]!;
      return true;
    },
  };
}
