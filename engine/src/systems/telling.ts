/** What the briefings of the systems share. Chances and costs are common practice, no source. */
import type { BriefingCard, BriefingSituation, Moment } from "./contract.ts";
import type { Side } from "./fields.ts";

/** Middle of the trade's bands of what a mistake costs to mend, pence (common practice, no source). */
export const COST = {
  trifle: 3_000,
  small: 12_000,
  middling: 40_000,
  large: 120_000,
  heavy: 300_000,
  /** someone may be hurt: weighed above any repair; such cards are compulsory besides */
  injury: 1_000_000,
} as const;

export interface CardTraits {
  readonly chance: number;
  readonly costPence: number;
  readonly minutes: number;
  readonly must?: boolean;
  readonly handsOn?: boolean;
  readonly caution?: boolean;
  readonly question?: boolean;
  readonly mentions?: readonly string[];
  readonly facts?: BriefingCard["facts"];
}

/** One card; what is left out is no. */
export function card(id: string, moment: Moment, traits: CardTraits): BriefingCard {
  const { chance, costPence, minutes } = traits;
  return {
    id,
    moment,
    mentions: traits.mentions ?? [],
    chance,
    costPence,
    minutes,
    must: traits.must ?? false,
    handsOn: traits.handsOn ?? false,
    hasCaution: traits.caution ?? false,
    hasQuestion: traits.question ?? false,
    facts: traits.facts ?? {},
  };
}

/** The cards whose condition holds, in order. */
export function cardsWhere(...pairs: readonly (readonly [boolean, BriefingCard])[]): readonly BriefingCard[] {
  return pairs.filter(([holds]) => holds).map(([, chosen]) => chosen);
}

/** The side in a hirer's words, in a vehicle driven from the right: an argument for the texts. */
export function sideWord(side: Side): "driver" | "passenger" {
  return side === "offside" ? "driver" : "passenger";
}

/** Frost may reach the water in the pipes or under the floor. */
export function isFrosty({ coldestNightC }: BriefingSituation): boolean {
  return coldestNightC <= 3;
}

/** Away from Great Britain and Northern Ireland. */
export function isAbroad({ country }: BriefingSituation): boolean {
  return country !== "GB";
}
