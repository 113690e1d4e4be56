import type { ForecastError } from "./draw-days.ts";

/** Error of the day's mean temperature on the day of issue and what each day ahead adds, K: from memory. */
const MEAN_K = 1;
const MEAN_K_PER_DAY = 0.25;
/** no worse than the climate's own spread about its normal */
const MEAN_MOST_K = 3.2;
/** of the daily range, and of the day's radiation, as shares of them: from memory */
const RANGE = 0.15;
const SUN = 0.2;
const SUN_PER_DAY = 0.03;
const SUN_MOST = 0.5;

/**
 * How far off a weather forecast may be, by whole days from its issue (0 or more); standard deviations, from memory.
 * @param hasSun whether it speaks of the day's radiation
 */
export function errorOf(leadDays: number, hasSun: boolean): ForecastError {
  const days = Math.max(0, leadDays);
  return {
    meanK: Math.min(MEAN_MOST_K, MEAN_K + MEAN_K_PER_DAY * days),
    range: RANGE,
    sun: hasSun ? Math.min(SUN_MOST, SUN + SUN_PER_DAY * days) : null,
  };
}
