import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { SolarSpec } from "./spec.ts";

export const briefing: SystemBriefing<SolarSpec> = {
  cards: (spec, situation) =>
    cardsWhere([
      situation.nightsOffHookUp > 0,
      card("solar.whatItGives", "living", {
        chance: 0.2,
        costPence: COST.trifle,
        minutes: 0.5,
        mentions: ["leisureBattery"],
        facts: { peakW: spec.peakW },
      }),
    ]),
};
