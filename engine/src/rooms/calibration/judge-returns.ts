import type { UseRates } from "../trip/types.ts";
import { calibrateRates, ratesOf } from "./calibrate-rates.ts";
import { forecastAtRates, judgeForecasts, type StoreJudgement } from "./judge-forecasts.ts";
import type { ReturnedUse } from "./types.ts";

/** The first so many of all returns only teach: 1 in 5. */
const ONLY_TEACHES = 5;
/** Rates are learnt anew so often at most over all returns, each time from the whole of what was known. */
const MOST_TIMES = 30;

/** All that was compared of one hire that is over. */
export interface ReturnOfHire {
  readonly hire: string;
  readonly vehicle: string;
  /** ISO date or time of its departure */
  readonly left: string;
  /** ISO date or time of its return */
  readonly returned: string;
  readonly uses: readonly ReturnedUse[];
}

export interface JudgedReturns {
  /** hires that only taught, oldest return first */
  readonly taught: readonly string[];
  /** hires that were judged, oldest return first */
  readonly judged: readonly string[];
  /** their forecasts by the descriptions alone */
  readonly before: readonly StoreJudgement[];
  /** their forecasts as the returns of hires that were back by then had taught them */
  readonly after: readonly StoreJudgement[];
  /** all that was judged, each with its forecast of `after`, oldest return first */
  readonly uses: readonly ReturnedUse[];
}

/**
 * Judges each forecast as it would have been made: with the rates that follow from the hires which were back on a
 * day before this one left, so that nothing is judged by what it taught itself. The oldest fifth of the returns only
 * teaches. Where there are many returns the rates are learnt anew after some of them and not after each, at most
 * {@link MOST_TIMES} times; a forecast then has the rates of a little earlier, never of later.
 * @param only judged for this vehicle only; all vehicles teach all the same
 */
export function judgeReturns(returns: readonly ReturnOfHire[], only: string | null = null): JudgedReturns {
  const sorted = returns.toSorted((a, b) => compare(a.returned, b.returned) || compare(a.hire, b.hire));
  const taught = Math.floor(sorted.length / ONLY_TEACHES);
  const judged = sorted.slice(taught).filter(({ vehicle }) => only === null || vehicle === only);
  const learnt = ratesAsKnown(sorted);
  const described = judged.flatMap(({ uses }) => uses);
  const uses = judged.flatMap((each) => each.uses.map((use) => forecastAtRates(use, learnt(each))));
  return {
    taught: sorted.slice(0, taught).map(({ hire }) => hire),
    judged: judged.map(({ hire }) => hire),
    before: judgeForecasts(described),
    after: judgeForecasts(uses),
    uses,
  };
}

/** What was known of the rates when a hire left. @param sorted by return */
function ratesAsKnown(sorted: readonly ReturnOfHire[]): (hire: ReturnOfHire) => UseRates {
  const block = Math.max(1, Math.ceil(sorted.length / MOST_TIMES));
  const learnt = new Map<number, ReturnType<typeof calibrateRates>>();
  return ({ left, vehicle }) => {
    const later = sorted.findIndex(({ returned }) => dayOf(returned) >= dayOf(left));
    const known = Math.floor((later < 0 ? sorted.length : later) / block) * block;
    const rates = learnt.get(known) ?? calibrateRates(sorted.slice(0, known).flatMap(({ uses }) => uses));
    learnt.set(known, rates);
    return ratesOf(rates, vehicle);
  };
}

const dayOf = (iso: string) => iso.slice(0, 10);
const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
