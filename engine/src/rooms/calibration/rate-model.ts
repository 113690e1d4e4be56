import { RATE_BOUNDS } from "../trip/types.ts";
import type { ReturnedUse } from "./types.ts";

/**
 * How vehicles and returns are taken to differ, as standard deviations of the logarithm (0.1 is about 10 %):
 * common practice, no source. `depot`: all vehicles of a depot from their descriptions. `vehicle`: one vehicle
 * from its depot. `warmth`: the rate of heating from that of all other use, one for the depot,
 * wide since little is known of it.
 */
export const PRIOR_SD = { depot: 0.25, vehicle: 0.15, warmth: 0.5 } as const;
/**
 * What a return tells of a rate is no more exact than this, since people differ from one hire to the next: practice.
 * Beyond it, as exact as its forecast says.
 */
const LEAST_SD = 0.2;
/** no forecast is taken to be closer than this */
const LEAST_OWN_SD = 0.02;
/**
 * A return further from its vehicle's rate than so many of its standard deviations pulls like one just there
 * (Huber 1964; at 1 the estimate keeps nine tenths of its exactness where nothing is wild, from memory).
 */
export const HELD_AT_SD = 1;
/** A return as far off as this is told as wild: about one in eighty of honest ones. */
const WILD_AT_SD = 2.5;
/** A square further out than this counts as just there when the scatter of the returns is taken. */
const SCATTER_AT_SD = 3;
/** returns as close to their forecasts as these say that are put before the real ones: practice */
export const SCATTER_PRIOR = 10;
/** the pull of the returns on the rates settles long before this */
const MOST_ROUNDS = 500;
const SETTLED = 1e-12;
/** P90 less P10 of a normal, in standard deviations */
const P10_TO_P90 = 2 * 1.2815515655446004;

export interface Normal {
  readonly mean: number;
  readonly sd: number;
}

/** One return as the model sees it: logarithm of measured over forecast, and its standard deviation. */
interface Sighting {
  readonly log: number;
  readonly sd: number;
  /** the heating's part of the forecast, 0 to 1 */
  readonly warmthShare: number;
  /** spread of its forecast as it is */
  readonly ownSd: number;
}

/** What the model found of one vehicle; all on the logarithm of the rate. */
export interface VehiclePosterior extends Normal {
  readonly vehicle: string;
  /** what the rest of the depot says of it, before its own returns */
  readonly prior: Normal;
  /** its own returns, weighed by how exact they are and held back where they are wild */
  readonly data: { readonly mean: number; readonly sd: number; readonly count: number };
  readonly wild: number;
}

export interface RatePosterior {
  /** logarithm of the rate of heating over that of all other use; 0 where nothing heats by this store */
  readonly warmth: number;
  /** variance of the rates as returns of such forecasts leave it, over the careful one that is told */
  readonly unsure: number;
  /** sum over the returns of the squared distance from their rate less what their forecast has, on the logarithm */
  readonly excessSum: number;
  /** sum over the returns of the squared spread that their forecasts have */
  readonly ownSum: number;
  readonly depot: Normal & { readonly count: number; readonly wild: number };
  readonly vehicles: readonly VehiclePosterior[];
}

/** The logarithm of measured over forecast use, and its spread as the forecast has it. */
function sightingOf({ used, quantiles, warmthShare = 0 }: ReturnedUse): Sighting | null {
  const [p10, p90] = [quantiles[1]!, quantiles[17]!];
  if (!(used > 0 && p10 > 0 && p90 > p10)) return null;
  // the middle of the logarithm, so that a forecast with a long tail expects no surprise on the whole
  const logs = quantiles.slice(1, -1).map(Math.log);
  const middle = logs.reduce((sum, log) => sum + log / logs.length, 0);
  const ownSd = Math.max(LEAST_OWN_SD, Math.log(p90 / p10) / P10_TO_P90);
  return { log: Math.log(used) - middle, sd: Math.max(LEAST_SD, ownSd), ownSd, warmthShare };
}

/**
 * Normal–Normal in two levels, by precision. A vehicle's rate is normal around its depot's, the depot's around the
 * description, a return around its vehicle's. The mean of each is what returns and prior say together, the spread
 * hangs on how many and how exact the returns are alone. Wild returns are held at {@link HELD_AT_SD} from the rate
 * and the update done again until nothing moves (Huber's modified residuals): a convex sum is made least, so the
 * answer is one, whatever the order of the returns. Where heating has a part in the use its rate is found between two
 * such updates, by the same returns held in the same way.
 */
export function fitRates(returns: readonly ReturnedUse[]): RatePosterior {
  const groups = groupSightings(returns);
  const heats = groups.some(({ seen }) => seen.some(({ warmthShare }) => warmthShare > 0));
  let warmth = 0;
  let found = update(groups.map((group) => summed(group, 0, warmth)));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const next = update(groups.map((group, k) => summed(group, found.vehicles[k]?.mean ?? 0, warmth)));
    const further = heats ? warmthFrom(groups, next, warmth) : 0;
    const moved = next.vehicles.map(({ mean }, k) => Math.abs(mean - found.vehicles[k]!.mean));
    const most = Math.max(0, Math.abs(further - warmth), ...moved);
    found = next;
    warmth = further;
    if (most < SETTLED) break;
  }
  const sum = (of: (each: Sighting) => number) =>
    groups.reduce((total, { seen }) => seen.reduce((part, each) => part + of(each), total), 0);
  const ownSum = sum(({ ownSd }) => ownSd ** 2);
  const heldSum = sum(({ sd }) => sd ** 2);
  // a rate is as unsure as the returns lie apart, not as wide as the least that they are held to
  const unsure = heldSum > 0 ? ownSum / heldSum : 1;
  const excessSum = excessOf(groups, found.vehicles, warmth, unsure);
  return { ...found, warmth, unsure, excessSum, ownSum };
}

/** Logarithm of what the heating's own rate makes of a whole use, over the rate of the rest. */
const mixed = ({ warmthShare }: Sighting, warmth: number): number =>
  Math.log1p(warmthShare * Math.expm1(warmth));

/**
 * One step of Gauss and Newton towards the heating's rate over the rest's, the vehicles' rates as they are, returns
 * held as for those. The depot's rate of heating stays within its bounds, so that the rest is fitted to what a forecast
 * can take.
 */
function warmthFrom(
  groups: readonly Group[],
  { depot, vehicles }: Pick<RatePosterior, "depot" | "vehicles">,
  warmth: number,
): number {
  let information = 1 / PRIOR_SD.warmth ** 2;
  let pull = -warmth / PRIOR_SD.warmth ** 2;
  groups.forEach(({ seen }, k) => {
    for (const each of seen) {
      const steep = (each.warmthShare * Math.exp(warmth)) / Math.exp(mixed(each, warmth));
      const off = each.log - mixed(each, warmth) - vehicles[k]!.mean;
      pull += (steep * heldWithin(off, HELD_AT_SD * each.sd)) / each.sd ** 2;
      information += (steep / each.sd) ** 2;
    }
  });
  const [least, most] = [Math.log(RATE_BOUNDS.least), Math.log(RATE_BOUNDS.most)];
  return Math.min(most - depot.mean, Math.max(least - depot.mean, warmth + pull / information));
}

/**
 * What the returns scatter around the rates of their vehicles beyond their forecasts, the rates' own uncertainty put
 * back, since a rate lies nearer to the returns that it was learnt from than the true one. A wild one counts as one at
 * {@link SCATTER_AT_SD} of the scatter found, which is found anew until it stays.
 */
function excessOf(
  groups: readonly Group[],
  vehicles: readonly Normal[],
  warmth: number,
  unsure: number,
): number {
  const seen = groups.flatMap((group, k) =>
    group.seen.map((each) => ({
      square: (each.log - mixed(each, warmth) - vehicles[k]!.mean) ** 2 + unsure * vehicles[k]!.sd ** 2,
      own: each.ownSd ** 2,
    })),
  );
  let excess = 0;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const variance = Math.max(0, excess) / (seen.length + SCATTER_PRIOR);
    const next = seen.reduce((sum, { square, own }) => {
      const most = SCATTER_AT_SD ** 2 * (own + variance);
      return sum + Math.min(square, most) - own;
    }, 0);
    if (Math.abs(next - excess) < SETTLED) break;
    excess = next;
  }
  return excess;
}

interface Group {
  readonly vehicle: string;
  readonly seen: readonly Sighting[];
}

/** By vehicle, everything in one order however it was handed in, so that not even the rounding hangs on it. */
function groupSightings(returns: readonly ReturnedUse[]): readonly Group[] {
  const groups = new Map<string, Sighting[]>();
  for (const each of returns) {
    const seen = sightingOf(each);
    if (seen !== null) groups.set(each.vehicle, [...(groups.get(each.vehicle) ?? []), seen]);
  }
  return [...groups]
    .map(([vehicle, seen]) => ({
      vehicle,
      seen: seen.sort((a, b) => a.log - b.log || a.ownSd - b.ownSd || a.warmthShare - b.warmthShare),
    }))
    .sort((a, b) => (a.vehicle < b.vehicle ? -1 : 1));
}

interface Summed {
  readonly vehicle: string;
  readonly precision: number;
  readonly mean: number;
  readonly count: number;
  readonly wild: number;
}

const heldWithin = (value: number, most: number): number => Math.max(-most, Math.min(most, value));

/** The returns of one vehicle as one: weighed by precision, each held near `around`. */
function summed({ vehicle, seen }: Group, around: number, warmth: number): Summed {
  let [precision, total, wild] = [0, 0, 0];
  for (const each of seen) {
    const { sd } = each;
    const off = each.log - mixed(each, warmth) - around;
    if (Math.abs(off) > WILD_AT_SD * sd) wild++;
    precision += 1 / sd ** 2;
    total += (around + heldWithin(off, HELD_AT_SD * sd)) / sd ** 2;
  }
  return { vehicle, precision, mean: total / precision, count: seen.length, wild };
}

/** The conjugate update of both levels. */
function update(groups: readonly Summed[]): Pick<RatePosterior, "depot" | "vehicles"> {
  const vehicleVariance = PRIOR_SD.vehicle ** 2;
  const pulls = groups.map(({ precision, mean }) => {
    const weight = 1 / (1 / precision + vehicleVariance);
    return { weight, total: weight * mean };
  });
  const depotWithout = (left: number | null): Normal => {
    let [precision, total] = [1 / PRIOR_SD.depot ** 2, 0];
    pulls.forEach((pull, k) => {
      if (k === left) return;
      precision += pull.weight;
      total += pull.total;
    });
    return { mean: total / precision, sd: Math.sqrt(1 / precision) };
  };
  const vehicles = groups.map(({ vehicle, precision, mean, count, wild }, k): VehiclePosterior => {
    const rest = depotWithout(k);
    const prior = { mean: rest.mean, sd: Math.hypot(rest.sd, PRIOR_SD.vehicle) };
    const all = 1 / prior.sd ** 2 + precision;
    return {
      vehicle,
      mean: (prior.mean / prior.sd ** 2 + precision * mean) / all,
      sd: Math.sqrt(1 / all),
      prior,
      data: { mean, sd: Math.sqrt(count / precision), count },
      wild,
    };
  });
  const depot = depotWithout(null);
  const sum = (of: (group: Summed) => number) => groups.reduce((total, group) => total + of(group), 0);
  return {
    depot: {
      mean: depot.mean,
      // of a vehicle that has no returns of its own
      sd: Math.hypot(depot.sd, PRIOR_SD.vehicle),
      count: sum(({ count }) => count),
      wild: sum(({ wild }) => wild),
    },
    vehicles,
  };
}
