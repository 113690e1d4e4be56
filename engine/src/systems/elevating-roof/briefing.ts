import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { ElevatingRoofSpec } from "./spec.ts";

export const briefing: SystemBriefing<ElevatingRoofSpec> = {
  cards: (spec) =>
    cardsWhere(
      [
        true,
        card("elevatingRoof.downBeforeDriving", "beforeDriving", {
          chance: 0.05,
          costPence: COST.heavy,
          minutes: 1,
          handsOn: true,
          question: true,
        }),
      ],
      [
        true,
        card("elevatingRoof.raise", "onArriving", {
          chance: 0.15,
          costPence: COST.large,
          minutes: 3,
          handsOn: true,
          caution: true,
        }),
      ],
      [
        spec.bed,
        card("elevatingRoof.bed", "night", {
          chance: 0.05,
          costPence: COST.middling,
          minutes: 1,
          caution: true,
        }),
      ],
    ),
};
