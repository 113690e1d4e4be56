import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { AirConditioningSpec } from "./spec.ts";

export const briefing: SystemBriefing<AirConditioningSpec> = {
  cards: (spec, situation) =>
    cardsWhere(
      [
        true,
        card("airConditioning.switchOn", "living", {
          chance: 0.2,
          costPence: COST.trifle,
          minutes: 2,
          handsOn: true,
          question: true,
          mentions: ["hookUp"],
        }),
      ],
      [
        true,
        card("airConditioning.whatItDraws", "onArriving", {
          chance: 0.3,
          costPence: COST.trifle,
          minutes: 1,
          mentions: ["hookUp"],
          facts: { mainsW: spec.mainsW, postA: postFor(spec) },
        }),
      ],
      [
        true,
        card("airConditioning.offFirst", "leavingPitch", {
          chance: 0.1,
          costPence: COST.small,
          minutes: 0.5,
          mentions: ["hookUp"],
        }),
      ],
      [
        true,
        card("airConditioning.nobodyLeftInside", "danger", {
          chance: situation.children > 0 ? 0.02 : 0.01,
          costPence: COST.injury,
          minutes: 0.5,
          must: true,
          caution: true,
        }),
      ],
    ),
};

/** The least usual post that starts it, A; a breaker lets a short start pass at about twice its rating (common practice, no source). */
function postFor({ mainsW, startA }: AirConditioningSpec): number {
  const least = Math.max(mainsW / 230, startA / 2);
  return [4, 6, 10, 16].find((amperes) => amperes >= least) ?? 16;
}
