import {
  type Calibration,
  calibrateRates,
  compareUse,
  judgeReturns,
  type ReturnedUse,
  type ReturnOfHire,
  type StoreJudgement,
} from "@setfair/engine";
import { makeSeason } from "../season/make-season.ts";
import { demoTerms } from "../terms.ts";
import { demoVehicles } from "../vehicles.ts";
import { earlierUses, type PastUse, pastUse } from "./past-hires.ts";

const RUNS = 100;
const SEED = 1;

export interface JudgedHistory {
  readonly hires: number;
  readonly taught: number;
  /** return of the first hire that is judged */
  readonly judgedFrom: string;
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

function returnOf(past: PastUse, index: number): ReturnOfHire {
  const { vehicle, party, trip, measured, returned } = past;
  const hire = String(index);
  const found = compareUse({ trip: { vehicle, party, trip, runs: RUNS, seed: SEED }, measured });
  const uses = found.comparisons.map(
    ({ store, used, mean, quantiles, warmthShare }): ReturnedUse => ({
      hire,
      vehicle: vehicle.id,
      store,
      used: used.value,
      mean: mean.value,
      quantiles,
      warmthShare,
    }),
  );
  return { hire, vehicle: vehicle.id, left: trip.depart, returned, uses };
}

/**
 * The engine's forecasts judged on the invented outcomes: each with the rates that the returns before its departure
 * have taught.
 */
export function judgeHistory(today: string): JudgedHistory {
  const returns = allUses(today).map(returnOf);
  const { taught, judged, before, after } = judgeReturns(returns);
  const first = returns.find(({ hire }) => hire === judged[0]);
  return {
    hires: returns.length,
    taught: taught.length,
    judgedFrom: first?.returned ?? today,
    before,
    after,
    calibration: calibrateRates(returns.flatMap(({ uses }) => uses)),
  };
}
