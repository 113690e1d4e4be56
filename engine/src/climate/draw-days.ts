import { keyedNormal, purposeKey } from "../base/random.ts";
import { clearnessAt, clearnessKnots } from "./clearness.ts";
import { normalProbability } from "./normal-probability.ts";

/** What the climate says of one day of the trip. */
export interface WeatherDay {
  /** 0 January to 11 */
  readonly month: number;
  readonly meanC: number;
  /** mean of daily maximum less minimum */
  readonly rangeK: number;
  readonly clearness: number;
  readonly extraterrestrialWhm2: number;
  /** of a day that a forecast speaks of: how far off it may be; null for the climate's own spread */
  readonly error: ForecastError | null;
}

/** How far off a weather forecast may be: standard deviations. */
export interface ForecastError {
  /** of the day's mean temperature, K */
  readonly meanK: number;
  /** of the daily range and of the day's radiation, as shares; null where the radiation is the climate's */
  readonly range: number;
  readonly sun: number | null;
}

/** Days of the whole ensemble: row by day, N runs each. */
export interface DrawnDays {
  /** rows from the day before the trip to the day after */
  readonly meanC: Float64Array;
  readonly rangeK: Float64Array;
  /** rows of the trip's days only: global horizontal irradiation of the day */
  readonly irradiationWhm2: Float64Array;
}

interface Season {
  /** standard deviation of the daily mean about its yearly course, K, and its correlation with the day before */
  readonly sdK: number;
  readonly lagT: number;
  /** correlation of daily clearness with the day before, with the temperature anomaly, with the daily range */
  readonly lagClear: number;
  readonly clearWithT: number;
  readonly clearWithRange: number;
}

/** December to February first; computed from daily series of 24 European lowland stations (source climate-spread). */
const SEASONS: readonly Season[] = [
  { sdK: 3.8, lagT: 0.8, lagClear: 0.32, clearWithT: -0.2, clearWithRange: 0.4 },
  { sdK: 3.2, lagT: 0.78, lagClear: 0.37, clearWithT: 0.2, clearWithRange: 0.65 },
  { sdK: 2.9, lagT: 0.78, lagClear: 0.34, clearWithT: 0.4, clearWithRange: 0.65 },
  { sdK: 3, lagT: 0.78, lagClear: 0.29, clearWithT: 0.1, clearWithRange: 0.55 },
];
/** spread of the daily range about its mean: common practice, no source */
const RANGE_VARIATION = 0.35;
const LEAST_RANGE = 0.15;
/** a forecast day has at least this share of the radiation told, and no day is clearer than this: from memory */
const LEAST_SUN = 0.1;
const MOST_CLEARNESS = 0.8;

const TEMPERATURE = purposeKey("weather.temperature");
const CLEARNESS = purposeKey("weather.clearness");
const RANGE = purposeKey("weather.range");

/** A season with what follows from it, worked out once: its draws are taken for every life and day. */
interface SeasonDraws extends Season {
  readonly r: number;
  readonly rOwn: number;
  readonly lagTOwn: number;
  readonly lagClearOwn: number;
  readonly rangeOwn: number;
  readonly smoothing: number;
}
const SEASON_DRAWS: readonly SeasonDraws[] = SEASONS.map((season) => {
  const r = shockCorrelation(season);
  const own = (share: number) => Math.sqrt(1 - share * share);
  return {
    ...season,
    r,
    rOwn: own(r),
    lagTOwn: own(season.lagT),
    lagClearOwn: own(season.lagClear),
    rangeOwn: own(season.clearWithRange),
    smoothing: smoothing(season.lagT),
  };
});

/** Draws anomaly, clearness and range of every day and run; without spread every run has the means. */
export function drawDays(
  days: readonly WeatherDay[],
  { runs, seed, spread }: { readonly runs: number; readonly seed: number; readonly spread: boolean },
): DrawnDays {
  const count = days.length;
  const drawn: DrawnDays = {
    meanC: new Float64Array((count + 2) * runs),
    rangeK: new Float64Array((count + 2) * runs),
    irradiationWhm2: new Float64Array(count * runs),
  };
  if (count === 0) return drawn;
  const seasons = days.map(({ month }) => SEASON_DRAWS[Math.floor(((month + 1) % 12) / 3)]!);
  const knots = spread ? days.map((day) => clearnessKnots(day.clearness)) : [];
  for (let run = 0; run < runs; run++) {
    let warm = keyedNormal(seed, run, -2, TEMPERATURE);
    let clear = keyedNormal(seed, run, -2, CLEARNESS);
    for (let row = 0; row < count + 2; row++) {
      const inTrip = row > 0 && row <= count;
      const at = Math.max(0, Math.min(count - 1, row - 1));
      const day = days[at]!;
      const slot = row * runs + run;
      if (!spread) {
        drawn.meanC[slot] = day.meanC;
        drawn.rangeK[slot] = day.rangeK;
        if (inTrip) drawn.irradiationWhm2[at * runs + run] = day.clearness * day.extraterrestrialWhm2;
        continue;
      }
      const season = seasons[at]!;
      const shock = keyedNormal(seed, run, row - 1, TEMPERATURE);
      const other = season.r * shock + season.rOwn * keyedNormal(seed, run, row - 1, CLEARNESS);
      warm = season.lagT * warm + season.lagTOwn * shock;
      clear = season.lagClear * clear + season.lagClearOwn * other;
      const { error } = day;
      const sdK = error === null ? season.sdK : error.meanK;
      const variation = error === null ? RANGE_VARIATION : error.range;
      drawn.meanC[slot] = day.meanC + sdK * season.smoothing * warm;
      drawn.rangeK[slot] =
        day.rangeK * rangeFactor(season, variation, clear, keyedNormal(seed, run, row - 1, RANGE));
      if (inTrip) {
        const sun = error === null ? null : error.sun;
        const clearness =
          sun === null
            ? clearnessAt(knots[at]!, normalProbability(clear))
            : Math.min(MOST_CLEARNESS, day.clearness * Math.max(LEAST_SUN, 1 + sun * clear));
        drawn.irradiationWhm2[at * runs + run] = clearness * day.extraterrestrialWhm2;
      }
    }
  }
  return drawn;
}

/** Correlation of the shocks that gives the wanted correlation of the two series. */
function shockCorrelation({ lagT, lagClear, clearWithT }: Season): number {
  return (clearWithT * (1 - lagT * lagClear)) / Math.sqrt((1 - lagT ** 2) * (1 - lagClear ** 2));
}

/** Straight lines from noon to noon flatten the day means a little; this gives their spread back. */
function smoothing(lag: number): number {
  const [own, next] = [0.75, 0.125];
  return 1 / Math.sqrt(own * own + 2 * next * next + 4 * own * next * lag + 2 * next * next * lag * lag);
}

function rangeFactor(season: SeasonDraws, variation: number, clear: number, own: number): number {
  return Math.max(LEAST_RANGE, 1 + variation * (season.clearWithRange * clear + season.rangeOwn * own));
}
