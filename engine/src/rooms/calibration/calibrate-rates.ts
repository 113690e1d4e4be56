import { type Figure, figure } from "../../base/figure.ts";
import { excessSpread, narrowing, rateOf } from "../../formulas/calibration.ts";
import {
  NARROWED_STORES,
  RATE_BOUNDS,
  READABLE_STORES,
  type ReadableStore,
  type UseRates,
} from "../trip/types.ts";
import { fitRates, type Normal, type RatePosterior, SCATTER_PRIOR } from "./rate-model.ts";
import type { Calibration, ReturnedUse, StoreRate, VehicleRates } from "./types.ts";

/** tenth and ninetieth per cent of a normal */
const P90_SD = 1.2815515655446004;
/** beyond this the mean of the logarithm is outside every bound anyway */
const MOST_LOG = 20;

/**
 * What returns say of the rates of vehicles and depot, store by store. Stores and vehicles without a return are
 * left out: their rate is 1, or the depot's. The order of the returns makes no difference.
 */
export function calibrateRates(returns: readonly ReturnedUse[]): Calibration {
  const depot: StoreRate[] = [];
  const vehicles = new Map<string, StoreRate[]>();
  for (const store of READABLE_STORES) {
    const found = fitRates(returns.filter((each) => each.store === store));
    if (found.depot.count === 0) continue;
    const { count, wild } = found.depot;
    const scatter = scatterFigures(found, count, store);
    depot.push({ store, ...rateFigures(found.depot, { count }), ...scatter, count, wild });
    for (const { vehicle, prior, data, wild: own, ...posterior } of found.vehicles) {
      const inputs = {
        priorMean: prior.mean,
        priorSd: prior.sd,
        dataMean: data.mean,
        dataSd: data.sd,
        count: data.count,
      };
      const rate = { store, ...rateFigures(posterior, inputs), ...scatter, count: data.count, wild: own };
      vehicles.set(vehicle, [...(vehicles.get(vehicle) ?? []), rate]);
    }
  }
  const byVehicle = [...vehicles].map(([vehicle, rates]): VehicleRates => ({ vehicle, rates }));
  return { depot, vehicles: byVehicle.sort((a, b) => (a.vehicle < b.vehicle ? -1 : 1)) };
}

/** Further apart than their forecasts, or closer together: never both. */
function scatterFigures(
  { excessSum, ownSum }: RatePosterior,
  count: number,
  store: ReadableStore,
): Pick<StoreRate, "spread" | "width"> {
  const { mostSd, leastWidth } = RATE_BOUNDS;
  const inputs = { excessSum, count, priorCount: SCATTER_PRIOR };
  const isNarrowed = NARROWED_STORES.some((each) => each === store);
  const least = isNarrowed ? leastWidth : 1;
  return {
    spread: figure(
      excessSpread(excessSum, count, SCATTER_PRIOR, mostSd),
      "-",
      "calibration.spread",
      { ...inputs, most: mostSd },
      "computed",
    ),
    width: figure(
      narrowing(excessSum, ownSum, count, SCATTER_PRIOR, least),
      "-",
      "calibration.width",
      { ...inputs, ownSum, least },
      "computed",
    ),
  };
}

function rateFigures(
  { mean, sd }: Normal,
  inputs: Figure["inputs"],
): Pick<StoreRate, "rate" | "low" | "high"> {
  const at = (times: number): Figure => {
    const meanLog = Math.min(MOST_LOG, Math.max(-MOST_LOG, mean + times * sd));
    const { least, most } = RATE_BOUNDS;
    return figure(
      rateOf(meanLog, least, most),
      "-",
      "calibration.rate",
      { meanLog, least, most, ...inputs },
      "computed",
      "bayes-rules",
    );
  };
  return { rate: at(0), low: at(-P90_SD), high: at(P90_SD) };
}

/** The rates that a forecast of this vehicle takes: its own, where it has no return of a store the depot's. */
export function ratesOf(calibration: Calibration, vehicle: string): UseRates {
  const own = calibration.vehicles.find((each) => each.vehicle === vehicle)?.rates ?? [];
  return Object.fromEntries(
    [...calibration.depot, ...own].map(({ store, rate, spread, width }) => [
      store,
      { times: rate.value, sd: spread.value, width: width.value },
    ]),
  );
}
