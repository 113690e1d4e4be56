import type { Figure } from "../../../base/figure.ts";
import type { BreakerVerdict } from "../../../formulas/mains.ts";
import type { MainsInstead } from "../../../systems/contract.ts";

/** Things that people plug in: no part of the vehicle. */
export const HABIT_LOADS = ["kettle", "smallKettle", "hairDryer", "toaster"] as const;
export type HabitLoad = (typeof HABIT_LOADS)[number];

/** What a load is: a kind of fitted system with its id, or something that people plug in. */
export interface LoadName {
  /** id of the fitted system; null for what people plug in */
  readonly system: string | null;
  /** kind of the system, or one of {@link HABIT_LOADS} */
  readonly kind: string;
}

/** One load with nothing else on. */
export interface LoadAlone extends LoadName {
  /** at its highest stage; for a kettle and the like the most that is usual */
  readonly power: Figure;
  readonly current: Figure;
  /** the least and the most that is usual, of what people plug in, give the better and the worse of two answers */
  readonly verdict: BreakerVerdict;
  readonly verdictAtLeast: BreakerVerdict;
  /** by when the breaker has tripped at the latest, by the standard; null where it need not */
  readonly latest: Figure | null;
}

/** What may stay on all the time, beside the others of the list. */
export interface LoadKept extends LoadName {
  /** stage that fits, W; 0 where it has to be off */
  readonly stage: Figure;
  /** what it would draw when nobody turns it down */
  readonly full: Figure;
  /** what stands in for the rest */
  readonly instead: MainsInstead;
}

/** Before something is switched on for minutes: what to turn down or off, in this order. */
export interface BeforeLoad extends LoadName {
  readonly power: Figure;
  /** in this order; `toW` 0 is off */
  readonly shed: readonly (LoadName & { readonly toW: number })[];
  /** false: too much for this post with all the rest off */
  readonly fits: boolean;
}

/** What a post can do for this vehicle. Common practice where no source stands beside a figure. */
export interface PostSize {
  /** what the post is rated for */
  readonly post: Figure;
  /** the lesser of post and inlet; what a lead on its drum may carry, where that is less */
  readonly limit: Figure;
  readonly power: Figure;
  /** at the vehicle, with the post used to its limit */
  readonly volts: Figure;
  readonly drop: Figure;
  /** more is lost in the lead than the wiring rules allow for other use than lighting */
  readonly isLow: boolean;
  readonly isOnDrum: boolean;
  readonly kept: readonly LoadKept[];
  readonly before: readonly BeforeLoad[];
}

/** Likewise the post of one stop, with what each load does to it alone. */
export interface PostForecast extends PostSize {
  readonly stop: number;
  readonly name: string;
  readonly alone: readonly LoadAlone[];
}
