/** The systems' contract, physics: what a system draws on the 230 V of a post, and what the way in can carry. */

/** What stands in for a load on 230 V that has to be off: another source, or nothing and it has to wait. */
export type MainsInstead = "gas" | "fuel" | "battery" | "waits";

/** One thing of a system that draws on the 230 V of a post. */
export interface MainsLoad {
  /** power of its stages, W, rising; the last is what it draws when nobody turns it down */
  readonly stagesW: readonly number[];
  /** runs for hours or only for minutes (a hob) */
  readonly lasts: "hours" | "minutes";
  readonly instead: MainsInstead;
  /** when it is wanted: `always`, or only while nights are cold or days are hot */
  readonly wanted: "always" | "cold" | "hot";
  /** current of the first moment where a motor starts, A */
  readonly startA?: number;
  /** kinds of systems whose own load is the same element as this one; they come before it in a step, and it has what they leave of the stage */
  readonly sameAs?: readonly string[];
}

/** The way in of 230 V: what it can carry, and what is lost in its lead. */
export interface MainsInlet {
  readonly maxA: number;
  readonly leadLengthM: number;
  readonly leadAreaMm2: number;
  readonly isOnDrum: boolean;
  /** voltage lost in the lead at a current in A, V */
  readonly dropV: (amperes: number) => number;
  /** most power at the inlet, W, at a post of so many A */
  readonly powerW: (postAmperes: number) => number;
}

/** What a system does on the 230 V of a post, set as the hire says. */
export interface MainsUse {
  readonly loads: readonly MainsLoad[];
  readonly inlet?: MainsInlet;
}
