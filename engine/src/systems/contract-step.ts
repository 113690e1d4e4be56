/** The systems' contract, physics: one system at work in one step of a forecast. */
import type { StoreId } from "../stores/stores.ts";

/**
 * One way of working, as vectors over the ensemble: for every trip `i`, running this mode at activity 1 for
 * the whole step needs `needs[k][i]` of store `needStores[k]` and gives `gives[k][i]` to `giveStores[k]`,
 * in the store's unit per step. Amounts are never negative. The trip room picks an activity from 0 to 1.
 */
export interface Mode {
  readonly id: string;
  /** at most two needs and one give */
  readonly needStores: readonly StoreId[];
  readonly needs: readonly Float64Array[];
  readonly giveStores: readonly StoreId[];
  readonly gives: readonly Float64Array[];
  /** upper bound of the activity from what the mode itself allows: 0 where it cannot run (engine off, too cold), up to 1 */
  readonly limit: Float64Array;
}

/** What a system sees at the start of a step. Arrays are over the N trips and must not be written to. */
export interface StepView {
  readonly n: number;
  /** length of the step, h */
  readonly dtH: number;
  /** hours since the trip began, at the start of the step */
  readonly hour: number;
  /** local clock time at the middle of the step, 0 to 24 h */
  readonly clockH: number;
  /** civil day of the trip, 0 at departure */
  readonly day: number;
  readonly driving: boolean;
  /** km driven in this step */
  readonly distanceKm: number;
  /** people aboard the vehicle (asleep or awake); a fraction while some are out */
  readonly people: number;
  /** what the pitch offers in this step; 0 without a post */
  readonly postAmperes: number;
  readonly outsideC: Float64Array;
  /** global horizontal irradiance, mean over the step, W/m² */
  readonly irradianceWm2: Float64Array;
  readonly cabinC: Float64Array;
  level(store: StoreId): Float64Array;
  /** level at the start of the step, of a store that has losses of its own */
  startLevel(store: StoreId): Float64Array;
  capacity(store: StoreId): Float64Array;
  /**
   * Fills `share` with the part, 0 to 1, of `need` (wanted evenly over the step) that takes the store down to `floor`,
   * a share of its capacity, and no further, with what is lost by drawing it so fast and what others have drawn of it.
   */
  shareDown(store: StoreId, need: Float64Array, floor: number, share: Float64Array): void;
  /** fills `out` with the cabin's temperature in the middle of the step where nothing is heated, °C */
  cabinMiddleC(out: Float64Array): void;
  /** fills `out` with the heat, Wh, that this step must give for the cabin to be at `setC[i]` at its end; never negative */
  heatToReach(setC: Float64Array, out: Float64Array): void;
  /** likewise the heat that keeps a cabin which is at `setC[i]` there over the step */
  heatToHold(setC: Float64Array, out: Float64Array): void;
  /** value drawn per trip and day for a purpose: standard normal, same for the whole day */
  dayNormal(purpose: string): Float64Array;
  /** value drawn once per trip (appliance spread): standard normal */
  tripNormal(purpose: string): Float64Array;
}

/** A time of the day in which a share of the day's use falls; `fromH` to `toH` by the clock, 0 to 24 h, not over midnight. */
export interface Window {
  readonly fromH: number;
  readonly toH: number;
  readonly share: number;
}

/** One system at work through one forecast. */
export interface Running {
  readonly modes: readonly Mode[];
  /** activity wanted in this step, 0 to 1, for each trip; shared out over the modes in their order; the settlement leaves in it what could not be met */
  readonly demand: Float64Array;
  /**
   * Makes a supply only as far as somebody takes it (an inverter): what is left of the supply at the end of the
   * step goes back to where it came from. Its one mode has one need and gives to a supply.
   */
  readonly onDemand?: boolean;
  /** with `onDemand`, once all before it have settled: fills its mode's `limit` for what is `wanted` of its supply in this step */
  hold?(view: StepView, wanted: Float64Array): void;
  /** left out where it may be wanted at any time; else it is asked only in steps on the road, or with a post that gives something */
  readonly only?: "driving" | "atPost";
  /** times of the day outside of which nothing is ever wanted, where there are such: it is then asked only in steps that touch them, and for one step more before and after each */
  readonly times?: readonly Window[];
  /** charges with what is left once everybody else has settled, and what was made on demand is back */
  readonly afterAll?: boolean;
  /** what goes without when its demand is not met, where no store would tell of it (a meal that an electric hob cannot cook): id of the finding `trip.without.<…>` */
  readonly goesWithout?: string;
  /**
   * Fills `demand`, which is its own, and every mode's `needs`, `gives` and `limit` for the step, the whole ensemble in
   * one call. False where nothing is wanted in this step in any life: nothing need be filled then.
   */
  prepare(view: StepView, demand: Float64Array): boolean;
}
