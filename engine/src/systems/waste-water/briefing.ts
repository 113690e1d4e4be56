import type { BriefingCard, SystemBriefing } from "../contract.ts";
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
          caution: true,
          question: true,
          facts: { side: sideWord(spec.side), litres: spec.litres },
        }),
      ],
      [true, card("wasteWater.noFat", "living", { chance: 0.1, costPence: COST.small, minutes: 0.5 })],
      [true, card("wasteWater.onReturn", "returning", { chance: 0.3, costPence: COST.trifle, minutes: 0.5 })],
      [isFrosty(situation), frost(spec)],
    ),
};

/** A heated tank needs power, from where it is fitted to take it. */
function frost({ heated, heatedFrom, heaterW }: WasteWaterSpec): BriefingCard {
  if (!heated) return card("wasteWater.frost", "night", { chance: 0.3, costPence: COST.large, minutes: 1 });
  const onBattery = heatedFrom === "battery";
  return card(onBattery ? "wasteWater.frostOnBattery" : "wasteWater.frostOnMains", "night", {
    chance: 0.1,
    costPence: COST.large,
    minutes: 1,
    mentions: [onBattery ? "leisureBattery" : "hookUp"],
    // half a day of running at 12 V, or nothing to reckon with on the post
    ...(onBattery ? { facts: { ampereHours: Math.round(heaterW) } } : {}),
  });
}
