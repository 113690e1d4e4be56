import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere, sideWord } from "../telling.ts";
import type { DefSpec } from "./spec.ts";

export const briefing: SystemBriefing<DefSpec> = {
  cards: (spec) =>
    cardsWhere([
      true,
      card("def.fill", "filling", {
        chance: 0.03,
        costPence: COST.heavy,
        minutes: 1.5,
        caution: true,
        question: true,
        mentions: ["fuel"],
        facts: {
          side: sideWord(spec.side),
          rangeKm: Math.round((spec.tankLitres / spec.litresPer1000Km) * 10) * 100,
        },
      }),
    ]),
};
