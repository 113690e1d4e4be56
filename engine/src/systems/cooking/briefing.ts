import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { CookingSpec } from "./spec.ts";

export const briefing: SystemBriefing<CookingSpec> = {
  cards: (spec) => {
    const isGas = spec.energy === "gas";
    return cardsWhere(
      [
        isGas,
        card("cooking.light", "living", {
          chance: 0.15,
          costPence: COST.injury,
          minutes: 2,
          must: true,
          handsOn: true,
          caution: true,
          question: true,
          mentions: ["lpg"],
        }),
      ],
      [
        isGas,
        card("cooking.neverHeat", "danger", {
          chance: 0.05,
          costPence: COST.injury,
          minutes: 0.5,
          must: true,
          caution: true,
        }),
      ],
      [
        spec.glassLid,
        card("cooking.lid", "living", { chance: 0.12, costPence: COST.middling, minutes: 0.5 }),
      ],
      [
        !isGas,
        card("cooking.electric", "living", {
          chance: 0.2,
          costPence: COST.trifle,
          minutes: 1,
          mentions: ["leisureBattery"],
        }),
      ],
      [
        spec.oven,
        card("cooking.grill", "living", {
          chance: 0.1,
          costPence: COST.small,
          minutes: 1,
          handsOn: true,
          caution: true,
        }),
      ],
    );
  },
};
