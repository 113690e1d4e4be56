import type { Figure } from "../../base/figure.ts";
import type { BriefingCard } from "../../systems/contract.ts";

/** One line of what a change does; texts `changes.<group>.<code>`. */
export interface ChangeLine {
  readonly code: string;
  readonly facts: Readonly<Record<string, Figure | string | number>>;
}
/** Something to be done because of it. */
export interface ChangeTask extends ChangeLine {
  /** last civil day, or time, on which it still helps; null where nobody can say */
  readonly by: string | null;
  /** that day is over already */
  readonly late: boolean;
  /** civil day, or time, at which a crossing leaves before this can be had by its usual lead time */
  readonly misses?: string;
}

export interface CardAgain {
  readonly card: BriefingCard;
  readonly systemId: string;
  readonly systemKind: string;
  /** `new`: the vehicle before had no such card · `different`: it says or does something else */
  readonly why: "new" | "different";
}
export interface BriefAgain {
  readonly again: readonly CardAgain[];
  /** cards that hold for both vehicles as they were told */
  readonly same: readonly string[];
  /** cards of the vehicle before that do not hold any more */
  readonly gone: readonly string[];
  readonly minutes: Figure;
}
