import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere, isFrosty } from "../telling.ts";
import type { HotWaterSpec } from "./spec.ts";

export const briefing: SystemBriefing<HotWaterSpec> = {
  cards: (spec, situation) =>
    cardsWhere(
      [
        true,
        card("hotWater.switchOn", "living", {
          chance: 0.2,
          costPence: COST.trifle,
          minutes: 1.5,
          handsOn: true,
          mentions: ["freshWater"],
          facts: { litres: spec.litres },
        }),
      ],
      [situation.children > 0, children],
      [
        spec.frostValveC > 0 && situation.coldestNightC < 10,
        card("hotWater.frostValve", "night", {
          chance: isFrosty(situation) ? 0.5 : 0.25,
          costPence: COST.middling,
          minutes: 2,
          handsOn: true,
          question: true,
          facts: { opensAtC: spec.frostValveC },
        }),
      ],
      [
        isFrosty(situation),
        card("hotWater.drain", "leavingPitch", {
          chance: 0.25,
          costPence: COST.large,
          minutes: 2,
          handsOn: true,
        }),
      ],
    ),
};

const children = card("hotWater.children", "danger", {
  chance: 0.03,
  costPence: COST.heavy,
  minutes: 0.5,
  caution: true,
});
