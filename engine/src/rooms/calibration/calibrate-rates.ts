import { type Figure, figure } from "../../base/figure.ts";
import { excessSpread, rateOf } from "../../formulas/calibration.ts";
import { RATE_BOUNDS, READABLE_STORES, type UseRates } from "../trip/types.ts";
import { fitRates, type Normal, SCATTER_PRIOR } from "./rate-model.ts";
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
    const spread = spreadFigure(found.excessSum, count);
    depot.push({ store, ...rateFigures(found.depot, { count }), spread, count, wild });
    for (const { vehicle, prior, data, wild: own, ...posterior } of found.vehicles) {
      const inputs = {
        priorMean: prior.mean,
        priorSd: prior.sd,
        dataMean: data.mean,
        dataSd: data.sd,
        count: data.count,
      };
      const rate = { store, ...rateFigures(posterior, inputs), spread, count: data.count, wild: own };
      vehicles.set(vehicle, [...(vehicles.get(vehicle) ?? []), rate]);
    }
  }
  const byVehicle = [...vehicles].map(([vehicle, rates]): VehicleRates => ({ vehicle, rates }));
  return { depot, vehicles: byVehicle.sort((a, b) => (a.vehicle < b.vehicle ? -1 : 1)) };
}

function spreadFigure(excessSum: number, count: number): Figure {
  const inputs = { excessSum, count, priorCount: SCATTER_PRIOR, most: RATE_BOUNDS.mostSd };
  const value = excessSpread(excessSum, count, SCATTER_PRIOR, RATE_BOUNDS.mostSd);
  return figure(value, "–", "calibration.spread", inputs, "computed");
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
      "–",
      "calibration.rate",
      { meanLog, least, most, ...inputs },
      "computed",
    );
  };
  return { rate: at(0), low: at(-P90_SD), high: at(P90_SD) };
}

/** The rates that a forecast of this vehicle takes: its own, where it has no return of a store the depot's. */
export function ratesOf(calibration: Calibration, vehicle: string): UseRates {
  const own = calibration.vehicles.find((each) => each.vehicle === vehicle)?.rates ?? [];
  return Object.fromEntries(
    [...calibration.depot, ...own].map(({ store, rate, spread }) => [
      store,
      { times: rate.value, sd: spread.value },
    ]),
  );
}
