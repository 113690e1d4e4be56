import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere, isFrosty, sideWord } from "../telling.ts";
import type { FreshWaterSpec } from "./spec.ts";

export const briefing: SystemBriefing<FreshWaterSpec> = {
  cards: (spec, situation) =>
    cardsWhere(
      [
        true,
        card("freshWater.fill", "filling", {
          chance: 0.04,
          costPence: COST.heavy,
          minutes: 2,
          handsOn: true,
          question: true,
          mentions: ["fuel"],
          facts: { side: sideWord(spec.side), litres: spec.litres },
        }),
      ],
      [
        true,
        card("freshWater.pump", "living", { chance: 0.15, costPence: COST.small, minutes: 1, handsOn: true }),
      ],
      [
        true,
        card("freshWater.travelLight", "beforeDriving", {
          chance: 0.4,
          costPence: COST.small,
          minutes: 1,
          question: true,
          facts: { litres: spec.litres },
        }),
      ],
      [
        true,
        card("freshWater.drink", "living", {
          chance: situation.children > 0 ? 0.05 : 0.02,
          costPence: COST.small,
          minutes: 0.5,
        }),
      ],
      [
        isFrosty(situation),
        card("freshWater.frost", "night", { chance: 0.3, costPence: COST.large, minutes: 2, handsOn: true }),
      ],
    ),
};
