import type { Figure } from "../../../base/figure.ts";
import type { StoreId } from "../../../stores/stores.ts";

/**
 * What is measured: the chance of trouble (%), or where that says nothing the share left at the tightest hour of the
 * middle life (%), or where trouble is all but certain the days until it comes (d).
 */
export type SwingBy = "chance" | "left" | "when";

/** One input of the forecast that nobody knows beforehand, held low and then high with all else as drawn. */
export interface SwingBar {
  /** `temperature`, `sun`, or what was drawn once per trip: `thermostat`, `water`, `shade`, `loss` … */
  readonly input: string;
  /** kind of the fitted system it belongs to; `weather` or `body` otherwise */
  readonly kind: string;
  /** the answer with the input at its P10 and at its P90 */
  readonly low: Figure;
  readonly high: Figure;
  /** the input itself at its P10 and P90, where it has a unit of its own */
  readonly inputLow: Figure | null;
  readonly inputHigh: Figure | null;
  /** what it moves the answer by, in the unit of the answer, 0 or more */
  readonly swing: number;
}

/** Which inputs move the answer for one store most. */
export interface Tornado {
  readonly store: StoreId;
  readonly by: SwingBy;
  /** with nothing held */
  readonly base: Figure;
  /** at most five, the widest first; none narrower than what the draws themselves blur */
  readonly bars: readonly SwingBar[];
  /** lives of each answer, the same draws in all */
  readonly runs: number;
  readonly tried: number;
}
