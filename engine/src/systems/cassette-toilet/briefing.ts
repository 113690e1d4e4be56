import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere, sideWord } from "../telling.ts";
import type { CassetteToiletSpec } from "./spec.ts";

export const briefing: SystemBriefing<CassetteToiletSpec> = {
  cards: (spec, situation) => {
    // about 4 L a person and day until the light comes on at 80 %: common practice, no source
    const days = Math.max(1, Math.floor((spec.litres * 0.8) / (4 * situation.people)));
    return cardsWhere(
      [
        true,
        card("cassetteToilet.blade", "living", {
          chance: 0.15,
          costPence: COST.middling,
          minutes: 2,
          handsOn: true,
          question: true,
        }),
      ],
      [
        true,
        card("cassetteToilet.empty", "leavingPitch", {
          chance: 0.4,
          costPence: COST.small,
          minutes: 4,
          handsOn: true,
          caution: true,
          question: true,
          facts: { side: sideWord(spec.side), days },
        }),
      ],
      [
        true,
        card(spec.flushFrom === "own" ? "cassetteToilet.doseOwn" : "cassetteToilet.dose", "living", {
          chance: 0.2,
          costPence: COST.trifle,
          minutes: 1,
          caution: true,
        }),
      ],
      [true, onReturn],
    );
  },
};

const onReturn = card("cassetteToilet.onReturn", "returning", {
  chance: 0.25,
  costPence: COST.trifle,
  minutes: 0.5,
});
