import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { BedsSpec } from "./spec.ts";

export const briefing: SystemBriefing<BedsSpec> = {
  cards: (spec, situation) =>
    cardsWhere(
      [
        spec.madeUp > 0,
        card("beds.makeUp", "night", { chance: 0.1, costPence: COST.small, minutes: 3, handsOn: true }),
      ],
      [
        true,
        card("beds.beforeSleep", "night", {
          chance: 0.02,
          costPence: COST.injury,
          minutes: 0.5,
          must: true,
          caution: true,
        }),
      ],
      [
        spec.upper,
        card("beds.upper", "night", {
          chance: situation.children > 0 ? 0.1 : 0.05,
          costPence: COST.large,
          minutes: 3,
          handsOn: true,
          caution: true,
          question: true,
          facts: { maxKg: spec.maxKgEach },
        }),
      ],
    ),
};
