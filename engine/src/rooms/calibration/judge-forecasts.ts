import { type Figure, figure } from "../../base/figure.ts";
import { normalQuantile } from "../../base/random.ts";
import { bias, coverage } from "../../formulas/calibration.ts";
import { READABLE_STORES, type ReadableStore, type UseRates } from "../trip/types.ts";
import { type ReturnedUse, USE_SHARES } from "./types.ts";

const P10 = USE_SHARES.indexOf(0.1);
const P50 = USE_SHARES.indexOf(0.5);
const P90 = USE_SHARES.indexOf(0.9);

/** How good the forecasts of one store were. */
export interface StoreJudgement {
  readonly store: ReadableStore;
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
 * Judges forecasts by what was measured, store by store; a forecast at a rate is taken as its forecast without, moved
 * by the rate and widened or narrowed by its spread, since use is in proportion to it until a store runs out. Stores without an
 * outcome are left out.
 * @param ratesFor the rates that a forecast was made with; none for the descriptions as they are
 */
export function judgeForecasts(
  returns: readonly ReturnedUse[],
  ratesFor: (use: ReturnedUse) => UseRates = () => ({}),
): readonly StoreJudgement[] {
  return READABLE_STORES.flatMap((store): StoreJudgement[] => {
    const own = returns.filter((each) => each.store === store);
    if (own.length === 0) return [];
    return [
      judgeStore(
        store,
        own.map((each) => forecastAtRates(each, ratesFor(each))),
      ),
    ];
  });
}

/** A forecast as it is at rates: quantiles moved, and their distance from the middle narrowed or widened on the logarithm. */
export function forecastAtRates(forecast: ReturnedUse, rates: UseRates): ReturnedUse {
  const rate = rates[forecast.store];
  if (rate === undefined) return forecast;
  const { sd, width } = rate;
  const warmthShare = rate.warmth === undefined ? 0 : (forecast.warmthShare ?? 0);
  const times = rate.times * (1 - warmthShare) + (rate.warmth ?? rate.times) * warmthShare;
  const middle = forecast.quantiles[P50]!;
  return {
    ...forecast,
    mean: forecast.mean * times * Math.exp(sd ** 2 / 2),
    quantiles: forecast.quantiles.map((level, k) => {
      // read as nothing at all: nothing to widen
      if (!(level > 0)) return 0;
      const own = width * Math.log(level / middle);
      const more = sd * normalQuantile(USE_SHARES[k]!);
      return times * middle * Math.exp(Math.sign(k - P50) * Math.hypot(own, more));
    }),
  };
}

function judgeStore(store: ReadableStore, own: readonly ReturnedUse[]): StoreJudgement {
  const count = own.length;
  const below = (k: number) => own.filter(({ used, quantiles }) => used <= quantiles[k]!).length;
  const inside = own.filter(
    ({ used, quantiles }) => used >= quantiles[P10]! && used <= quantiles[P90]!,
  ).length;
  const measured = own.reduce((sum, { used }) => sum + used, 0);
  const forecast = own.reduce((sum, { mean }) => sum + mean, 0);
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
