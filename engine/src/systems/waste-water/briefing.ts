import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere, isFrosty, sideWord } from "../telling.ts";
import type { WasteWaterSpec } from "./spec.ts";

export const briefing: SystemBriefing<WasteWaterSpec> = {
  cards: (spec, situation) =>
    cardsWhere(
      [
        true,
        card("wasteWater.empty", "leavingPitch", {
          chance: 0.3,
          costPence: COST.small,
          minutes: 2,
          handsOn: true,
          question: true,
          facts: { side: sideWord(spec.side), litres: spec.litres },
        }),
      ],
      [true, card("wasteWater.onReturn", "returning", { chance: 0.3, costPence: COST.trifle, minutes: 0.5 })],
      [
        isFrosty(situation),
        card(spec.heated ? "wasteWater.frostHeated" : "wasteWater.frost", "night", {
          chance: spec.heated ? 0.05 : 0.3,
          costPence: COST.large,
          minutes: 1,
        }),
      ],
    ),
};
