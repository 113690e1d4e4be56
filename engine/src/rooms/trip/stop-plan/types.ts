import type { Figure } from "../../../base/figure.ts";
import type { StoreId } from "../../../stores/stores.ts";
import type { Stop, Trip } from "../../situation.ts";
import type { TripForecast } from "../types.ts";

export type Act = Stop["acts"][number];
/** What a pitch must offer before an act can be done there. */
export type PitchNeed = "post" | "freshWater" | "wasteDrain" | "cassettePoint" | "lpgExchange";

/** What the plan says for one stop. */
export interface StopCard {
  readonly stop: number;
  readonly name: string;
  /** done here, in the order in which they are done */
  readonly acts: readonly Act[];
  /** of them, those that were not asked for; and those asked for that are not needed */
  readonly added: readonly Act[];
  readonly dropped: readonly Act[];
  /** settings by the id of the fitted system, where they are other than on the rest of the trip */
  readonly settings: Stop["settings"] | null;
  /** fresh water to leave with, the least that reaches the next tap in all lives of the forecast, and a tenth more; null without a tank */
  readonly leaveWithWater: Figure | null;
}

export interface StoreChance {
  readonly store: StoreId;
  /** chance of trouble before the return, 0 to 1: as asked, and with the plan */
  readonly asAsked: number;
  readonly withPlan: number;
}

/** Where no plan works with these pitches: the least that would have to be another. */
export interface OtherPitch {
  readonly stop: number;
  readonly name: string;
  readonly needs: readonly PitchNeed[];
}

export interface StopPlan {
  /** effort + cost × chance: what the search makes least; of this the effort is an input of the figure */
  readonly objective: { readonly asAsked: Figure; readonly withPlan: Figure };
  readonly cards: readonly StopCard[];
  /** what to leave the depot with */
  readonly departWith: Trip["departWith"];
  readonly departWithWater: Figure | null;
  readonly chances: readonly StoreChance[];
  /** chance of no trouble at all, in steps of 5 % for showing */
  readonly lastsShownPct: { readonly asAsked: number; readonly withPlan: number };
  /** the trip with the plan in it, and its forecast */
  readonly trip: Trip;
  readonly forecast: TripForecast;
  /** empty where the plan works, or where no other pitch would help either */
  readonly otherPitches: readonly OtherPitch[];
  readonly search: {
    readonly lives: number;
    readonly evaluations: number;
    /** nothing that was left out can be better by more than the stated share, given that the stores do not touch each other */
    readonly proven: boolean;
    readonly within: number;
  };
}
