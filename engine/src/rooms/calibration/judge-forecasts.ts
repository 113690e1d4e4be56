import { type Figure, figure } from "../../base/figure.ts";
import { bias, coverage } from "../../formulas/calibration.ts";
import type { StoreId } from "../../stores/stores.ts";
import { READABLE_STORES, type UseRates } from "../trip/types.ts";
import { type ReturnedUse, USE_SHARES } from "./types.ts";

const P10 = USE_SHARES.indexOf(0.1);
const P90 = USE_SHARES.indexOf(0.9);

/** How good the forecasts of one store were. */
export interface StoreJudgement {
  readonly store: StoreId;
  /** outcomes judged */
  readonly count: number;
  /** share of them from P10 to P90 of their forecast */
  readonly coverage: Figure;
  /** all measured over all forecast, less 1 */
  readonly bias: Figure;
  /** for each of {@link USE_SHARES}, the share of outcomes at or below that quantile of their forecast */
  readonly observed: readonly number[];
}

/**
 * Judges forecasts by what was measured, store by store; a forecast at a rate is its forecast at 1 times the rate,
 * since use is in proportion to it until a store runs out. Stores without an outcome are left out.
 * @param ratesFor the rates that a vehicle's forecasts were made with; none for the descriptions as they are
 */
export function judgeForecasts(
  returns: readonly ReturnedUse[],
  ratesFor: (vehicle: string) => UseRates = () => ({}),
): readonly StoreJudgement[] {
  return READABLE_STORES.flatMap((store): StoreJudgement[] => {
    const own = returns.filter((each) => each.store === store);
    if (own.length === 0) return [];
    const rates = own.map(({ vehicle }) => ratesFor(vehicle)[store] ?? 1);
    return [judgeStore(store, own, rates)];
  });
}

function judgeStore(store: StoreId, own: readonly ReturnedUse[], rates: readonly number[]): StoreJudgement {
  const count = own.length;
  const below = (k: number) =>
    own.filter(({ used, quantiles }, i) => used <= rates[i]! * quantiles[k]!).length;
  const inside = own.filter(
    ({ used, quantiles }, i) => used >= rates[i]! * quantiles[P10]! && used <= rates[i]! * quantiles[P90]!,
  ).length;
  const measured = own.reduce((sum, { used }) => sum + used, 0);
  const forecast = own.reduce((sum, { mean }, i) => sum + rates[i]! * mean, 0);
  return {
    store,
    count,
    coverage: figure(coverage(inside, count), "share", "calibration.coverage", { inside, count }, "computed"),
    bias: figure(
      bias(measured, forecast),
      "share",
      "calibration.bias",
      { measured, forecast, count },
      "computed",
    ),
    observed: USE_SHARES.map((_, k) => below(k) / count),
  };
}
