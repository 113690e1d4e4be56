/** What the fault finder takes and gives. Plain data: the same on the desk, in a request, and on a phone with no signal. */
import type { Figure } from "../../base/figure.ts";
import type { StoreId } from "../../stores/stores.ts";
import type { Symptom } from "../../systems/contract.ts";

/**
 * fixed: that was it, and it works again · found: that is it, but it does not work yet ·
 * notIt: done, and it was not that · cannotTell: not done, or nothing could be seen from it
 */
export const CHECK_ANSWERS = ["fixed", "found", "notIt", "cannotTell"] as const;
export type CheckAnswer = (typeof CHECK_ANSWERS)[number];

export interface AnsweredCheck {
  readonly check: string;
  readonly answer: CheckAnswer;
}

/** Who does what is proposed: a hirer is never asked for what needs trained hands. */
export const HANDS = ["hirer", "trained"] as const;
export type Hands = (typeof HANDS)[number];

/** A symptom of one fitted system, cut down to what this vehicle has. */
export interface SymptomOnVehicle {
  readonly symptom: Symptom;
  readonly systemId: string;
  readonly systemKind: string;
}

/** Chance, 0 to 1, that a store is at the end that is trouble, now. */
export interface StoreNow {
  readonly store: StoreId;
  readonly troubleChance: number;
}

/** How often the depot found a cause behind this symptom. */
export interface CauseCount {
  readonly cause: string;
  readonly count: number;
}

/** What is known beside the symptom. */
export interface DiagnosisKnown {
  readonly answers: readonly AnsweredCheck[];
  readonly stores?: readonly StoreNow[] | undefined;
  readonly history?: readonly CauseCount[] | undefined;
  /** hirer where left out */
  readonly hands?: Hands | undefined;
}

export interface LikelyCause {
  /** text `cause.<id>` */
  readonly cause: string;
  readonly chance: Figure;
  /** symptom of this vehicle that this cause is itself, where it can be looked into further */
  readonly leadsTo: string | null;
}

export interface ProposedCheck {
  /** text `faultCheck.<id>` */
  readonly check: string;
  readonly minutes: Figure;
  /** chance that this check finds the cause, if it comes to it */
  readonly finds: Figure;
  /** chance that it comes to it */
  readonly reached: Figure;
  readonly causes: readonly string[];
  readonly danger: 0 | 1 | 2;
}

/**
 * stop: dangerous, stop and call at once · check: do the next · fixed: it works again · found: the cause is
 * known · call: nothing is left that these hands may do
 */
export const DIAGNOSIS_OUTCOMES = ["stop", "check", "fixed", "found", "call"] as const;
export type DiagnosisOutcome = (typeof DIAGNOSIS_OUTCOMES)[number];

export interface Diagnosis {
  readonly symptom: string;
  readonly systemId: string;
  readonly systemKind: string;
  readonly dangerous: boolean;
  readonly outcome: DiagnosisOutcome;
  /** likeliest first; after found or fixed only those that the check names */
  readonly causes: readonly LikelyCause[];
  readonly next: ProposedCheck | null;
  /** the next and what follows while nothing is found, in the order of least expected time */
  readonly plan: readonly ProposedCheck[];
  /** expected minutes until something is found or nothing is left to do; null without a plan */
  readonly expectedMinutes: Figure | null;
  /** where the cause found is a fault of its own, the symptom to go on with */
  readonly goOnWith: string | null;
  /** checks left for trained hands, likeliest per minute first */
  readonly leftForTrained: readonly string[];
  readonly tried: readonly AnsweredCheck[];
}
