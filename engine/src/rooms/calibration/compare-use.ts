import { parseWith } from "../../base/bad-input.ts";
import { figure } from "../../base/figure.ts";
import { keyedNormal, purposeKey } from "../../base/random.ts";
import { sortedQuantile } from "../../formulas/statistics.ts";
import { STORES } from "../../stores/stores.ts";
import { planTrip, type TripPlan } from "../trip/plan-trip.ts";
import type { ReadableStore } from "../trip/types.ts";
import { type MeteredWindow, meterWindows } from "./meter-windows.ts";
import {
  type LeftOut,
  type LeftOutWhy,
  measuredSchema,
  type ReturnedHire,
  USE_SHARES,
  type UseComparison,
  type UseOfHire,
} from "./types.ts";

/** a use is compared only where the forecast has at least so many times the error of measuring: practice */
const LEAST_TIMES_SD = 4;
/** what cannot be less than nothing is taken as this share of the forecast, so that a rate can be formed: practice */
const LEAST_SHARE = 0.05;
/** use of these goes by the kilometres really driven */
const BY_DISTANCE: ReadonlySet<ReadableStore> = new Set(["fuel", "def", "tractionBattery"]);

/**
 * What each store of a hire used between its readings, beside what the forecast says for the same hours: the
 * trip lived again as it was planned, at the rates given in it. Use by distance is held to the odometer.
 * A store that was not read, filled by an unknown amount, charged between the readings or read too coarsely is
 * left out and said so; which ones are left out hangs on the forecast and the readings' error, never on whether the
 * measured use agrees. Throws BadInput that names the field.
 */
export function compareUse({ trip, measured }: ReturnedHire): UseOfHire {
  const plan = planTrip(trip);
  const told = parseWith(measuredSchema, measured, "measured");
  const metered = meterWindows(plan, told);
  const comparisons: UseComparison[] = [];
  const leftOut: LeftOut[] = [];
  for (const [store, windows] of metered) {
    const answer = compareStore(plan, store, windows, distanceTimes(plan, told.distanceKm, store));
    if (typeof answer === "string") leftOut.push({ store, why: answer });
    else comparisons.push(answer);
  }
  return { comparisons, leftOut };
}

/** Kilometres driven over those planned. */
function distanceTimes({ input }: TripPlan, distanceKm: number | undefined, store: ReadableStore): number {
  if (distanceKm === undefined || !BY_DISTANCE.has(store)) return 1;
  const { stops, returnDrive } = input.trip;
  const planned = stops.reduce((sum, { drive }) => sum + drive.distanceKm, returnDrive.distanceKm);
  return planned > 0 ? distanceKm / planned : 1;
}

function compareStore(
  { input }: TripPlan,
  store: ReadableStore,
  windows: readonly MeteredWindow[],
  times: number,
): UseComparison | LeftOutWhy {
  const known = windows.filter(({ why }) => why === null);
  if (known.length === 0) return windows[0]?.why ?? "notRead";
  const fit = known.filter(({ forecast }) => isUse(forecast));
  const sd = Math.sqrt(fit.reduce((sum, window) => sum + window.sd ** 2, 0));
  const lives = new Float64Array(input.runs);
  for (const { forecast } of fit) for (let i = 0; i < lives.length; i++) lives[i]! += times * forecast[i]!;
  const middle = sortedQuantile(lives.toSorted(), 0.5);
  if (fit.length === 0 || middle < LEAST_TIMES_SD * sd) return "tooLittle";
  const mean = lives.reduce((sum, use) => sum + use / lives.length, 0);
  const warmth = fit.reduce((sum, window) => sum + (times * window.warmth) / input.runs, 0);
  const read = fit.reduce((sum, window) => sum + window.used, 0);
  const used = Math.max(read, LEAST_SHARE * middle);
  const { unit } = STORES[store];
  const hours = fit.reduce((sum, window) => sum + window.hours, 0);
  return {
    store,
    unit,
    used: figure(used, unit, "-", { windows: fit.length, hours, sd }, "measured"),
    quantiles: asMeasured(lives, sd, input.seed, store),
    mean: figure(mean, unit, "-", { runs: input.runs, seed: input.seed, distanceTimes: times }, "computed"),
    warmthShare: mean > 0 ? Math.min(1, Math.max(0, warmth / mean)) : 0,
    windows: fit.length,
    hours,
  };
}

/** A battery in the sun may gain between two readings: such hours say nothing of its use. */
function isUse(forecast: Float64Array): boolean {
  return sortedQuantile(forecast.toSorted(), 0.1) > 0;
}

/**
 * Quantiles of what would be read: use with the normal error of the readings, never below nothing.
 * What is measured is one life more than the lives lived, so that so many of the n + 1 lie under each quantile
 * (Hyndman and Fan 1996, definition 6); few lives then make no band too narrow.
 */
function asMeasured(lives: Float64Array, sd: number, seed: number, store: ReadableStore): number[] {
  const key = purposeKey(`calibration.${store}`);
  const n = lives.length;
  const read = lives.map((use, i) => Math.max(0, use + sd * keyedNormal(seed, i, 0, key))).sort();
  return USE_SHARES.map((share) => {
    const at = n > 1 ? (share * (n + 1) - 1) / (n - 1) : 0.5;
    return sortedQuantile(read, Math.min(1, Math.max(0, at)));
  });
}
