import {
  type Calibration,
  calibrateRates,
  compareUse,
  judgeForecasts,
  type ReturnedUse,
  ratesOf,
  type StoreJudgement,
} from "@setfair/engine";
import { makeSeason } from "../season/make-season.ts";
import { demoTerms } from "../terms.ts";
import { demoVehicles } from "../vehicles.ts";
import { earlierUses, type PastUse, pastUse } from "./past-hires.ts";

const RUNS = 100;
const SEED = 1;
/** of the returns, oldest first, so many in ten teach; the others are judged */
const TEACH_TENTHS = 6;

export interface JudgedHistory {
  readonly hires: number;
  readonly taught: number;
  readonly cutOn: string;
  readonly before: readonly StoreJudgement[];
  readonly after: readonly StoreJudgement[];
  readonly calibration: Calibration;
}

/** Every return of the invented firm up to a day, oldest first. */
function allUses(today: string): readonly PastUse[] {
  const [terms, vehicles] = [demoTerms(today), demoVehicles(today)];
  const season = makeSeason({ today, terms, vehicles, taken: [] }).flatMap(
    (hire) => pastUse(hire, vehicles) ?? [],
  );
  return [...earlierUses({ today, terms, vehicles }), ...season].sort((a, b) =>
    a.returned < b.returned ? -1 : 1,
  );
}

function comparisons(past: PastUse, index: number): readonly ReturnedUse[] {
  const { vehicle, party, trip, measured } = past;
  const found = compareUse({ trip: { vehicle, party, trip, runs: RUNS, seed: SEED }, measured });
  return found.comparisons.map(({ store, used, mean, quantiles, warmthShare }) => ({
    hire: String(index),
    vehicle: vehicle.id,
    store,
    used: used.value,
    mean: mean.value,
    quantiles,
    warmthShare,
  }));
}

/**
 * The engine's forecasts judged on the invented outcomes: rates are learnt from the earlier returns and judged on the
 * later ones, which taught nothing.
 */
export function judgeHistory(today: string): JudgedHistory {
  const uses = allUses(today);
  const taught = Math.floor((uses.length * TEACH_TENTHS) / 10);
  const calibration = calibrateRates(uses.slice(0, taught).flatMap(comparisons));
  const judged = uses.slice(taught).flatMap(comparisons);
  return {
    hires: uses.length,
    taught,
    cutOn: uses[taught]?.returned ?? today,
    before: judgeForecasts(judged),
    after: judgeForecasts(judged, (vehicle) => ratesOf(calibration, vehicle)),
    calibration,
  };
}
