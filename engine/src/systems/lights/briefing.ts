import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { LightsSpec } from "./spec.ts";

export const briefing: SystemBriefing<LightsSpec> = {
  cards: (_spec, situation) =>
    cardsWhere([
      true,
      card("lights.mainSwitch", "living", {
        chance: situation.firstTime ? 0.2 : 0.05,
        costPence: COST.trifle,
        minutes: 1,
        handsOn: true,
      }),
    ]),
};
