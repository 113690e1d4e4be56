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
    depot.push({ store, ...ratesAndScatter(found, found.depot, { count }, store), count, wild });
    for (const { vehicle, prior, data, wild: own, ...posterior } of found.vehicles) {
      const inputs = {
        priorMean: prior.mean,
        priorSd: prior.sd,
        dataMean: data.mean,
        dataSd: data.sd,
        count: data.count,
      };
      const figures = ratesAndScatter(found, posterior, inputs, store);
      const rate = { store, ...figures, count: data.count, wild: own };
      vehicles.set(vehicle, [...(vehicles.get(vehicle) ?? []), rate]);
    }
  }
  const byVehicle = [...vehicles].map(([vehicle, rates]): VehicleRates => ({ vehicle, rates }));
  return { depot, vehicles: byVehicle.sort((a, b) => (a.vehicle < b.vehicle ? -1 : 1)) };
}

function ratesAndScatter(
  found: RatePosterior,
  normal: Normal,
  inputs: Figure["inputs"],
  store: ReadableStore,
): Omit<StoreRate, "store" | "count" | "wild"> {
  const { warmth } = found;
  return {
    ...rateFigures(normal, inputs),
    ...(warmth === 0 ? {} : { warmth: rateFigure(normal.mean + warmth, { ...inputs, warmth }) }),
    ...scatterFigures(found, normal.sd, store),
  };
}

/**
 * Further apart than their forecasts, or closer together: never both. How unsure the rate itself is counts as scatter:
 * the next hire differs from the forecast by both.
 */
function scatterFigures(
  { excessSum: ofReturns, ownSum, unsure, depot: { count } }: RatePosterior,
  rateSd: number,
  store: ReadableStore,
): Pick<StoreRate, "spread" | "width"> {
  const excessSum = ofReturns + (count + SCATTER_PRIOR) * unsure * rateSd ** 2;
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
  const at = (times: number) => rateFigure(mean + times * sd, inputs);
  return { rate: at(0), low: at(-P90_SD), high: at(P90_SD) };
}

function rateFigure(log: number, inputs: Figure["inputs"]): Figure {
  const meanLog = Math.min(MOST_LOG, Math.max(-MOST_LOG, log));
  const { least, most } = RATE_BOUNDS;
  return figure(
    rateOf(meanLog, least, most),
    "-",
    "calibration.rate",
    { meanLog, least, most, ...inputs },
    "computed",
    "bayes-rules",
  );
}

/** The rates that a forecast of this vehicle takes: its own, where it has no return of a store the depot's. */
export function ratesOf(calibration: Calibration, vehicle: string): UseRates {
  const own = calibration.vehicles.find((each) => each.vehicle === vehicle)?.rates ?? [];
  return Object.fromEntries(
    [...calibration.depot, ...own].map(({ store, rate, warmth, spread, width }) => [
      store,
      {
        times: rate.value,
        ...(warmth === undefined ? {} : { warmth: warmth.value }),
        sd: spread.value,
        width: width.value,
      },
    ]),
  );
}
