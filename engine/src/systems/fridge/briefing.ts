import type { BriefingSituation, SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { FridgeSpec } from "./spec.ts";

export const briefing: SystemBriefing<FridgeSpec> = {
  cards: (spec, situation) => (spec.type === "absorption" ? absorption(situation) : compressor(situation)),
};

const doorLatch = card("fridge.doorLatch", "beforeDriving", {
  chance: 0.12,
  costPence: COST.small,
  minutes: 1,
  handsOn: true,
});
const precool = card("fridge.loadCold", "living", { chance: 0.3, costPence: COST.trifle, minutes: 0.5 });
const medicine = card("fridge.medicine", "danger", { chance: 0.005, costPence: COST.large, minutes: 0.5 });
const ventsClear = card("fridge.ventsClear", "onArriving", {
  chance: 0.1,
  costPence: COST.trifle,
  minutes: 0.5,
});
const doorAjar = card("fridge.emptyOnReturn", "returning", {
  chance: 0.2,
  costPence: COST.trifle,
  minutes: 0.5,
});

function absorption(situation: BriefingSituation) {
  return cardsWhere(
    [
      true,
      card("fridge.threeSources", "living", {
        chance: 0.4,
        costPence: COST.small,
        minutes: 3,
        handsOn: true,
        question: true,
        mentions: ["lpg", "hookUp"],
      }),
    ],
    [true, card("fridge.level", "onArriving", { chance: 0.3, costPence: COST.trifle, minutes: 1 })],
    [true, doorLatch],
    [true, precool],
    [true, ventsClear],
    [true, medicine],
    [
      true,
      card("fridge.ammonia", "danger", { chance: 0.01, costPence: COST.heavy, minutes: 0.5, caution: true }),
    ],
    [
      situation.coldestNightC < 5,
      card("fridge.winterCovers", "night", { chance: 0.15, costPence: COST.trifle, minutes: 0.5 }),
    ],
    [true, doorAjar],
  );
}

function compressor(situation: BriefingSituation) {
  return cardsWhere(
    [
      true,
      card("fridge.compressor", "living", {
        chance: 0.1 + Math.min(0.4, 0.1 * situation.nightsOffHookUp),
        costPence: COST.small,
        minutes: 1.5,
        handsOn: true,
        question: true,
        mentions: ["leisureBattery"],
      }),
    ],
    [true, doorLatch],
    [true, precool],
    [true, medicine],
    [true, doorAjar],
  );
}
