import * as z from "zod/mini";
import type { Figure } from "../../base/figure.ts";
import type { BriefingCard } from "../../systems/contract.ts";
import { vehicleDescriptionSchema } from "../../vehicle/description.ts";

export const briefingSituationSchema = z.strictObject({
  /** the country that asks most, where the trip leads through several */
  country: z.string().check(z.regex(/^[A-Z]{2}$/, "expected a two-letter country code (ISO 3166-1)")),
  nightsOffHookUp: z.int().check(z.minimum(0), z.maximum(365)),
  coldestNightC: z.number().check(z.minimum(-50), z.maximum(40)),
  firstTime: z.boolean(),
  people: z.int().check(z.minimum(1), z.maximum(12)),
  children: z.int().check(z.minimum(0), z.maximum(11)),
  /** left out: not known, so what is said of dogs is said */
  dogs: z.optional(z.int().check(z.minimum(0), z.maximum(20))),
});

/** What the briefing is asked. Published as the schema of `setfair briefing`. */
export const briefingInputSchema = z.strictObject({
  vehicle: vehicleDescriptionSchema,
  situation: briefingSituationSchema,
  /** time for the demonstration */
  slotMinutes: z.number().check(z.minimum(0), z.maximum(480)),
  /** ids of the cards that the hirer knows already */
  known: z.optional(z.array(z.string()).check(z.maxLength(500))),
});
export type BriefingInput = z.infer<typeof briefingInputSchema>;

/** Why a card stands where it does; texts `briefing.why.<why>`. */
export type CardReason = "must" | "worthTheTime" | "noTimeLeft" | "alreadyKnown";

export interface CardInOrder {
  readonly card: BriefingCard;
  /** the fitted system that asks, by its id in the description */
  readonly systemId: string;
  readonly systemKind: string;
  readonly risk: Figure;
  readonly minutes: Figure;
  readonly why: CardReason;
}

export interface Briefing {
  /** in the order of the demonstration: by moment, then what must be shown, then by risk */
  readonly demonstrate: readonly CardInOrder[];
  /** sent beforehand, the greatest risk first */
  readonly reading: readonly CardInOrder[];
  /** length of the demonstration */
  readonly minutes: Figure;
}
