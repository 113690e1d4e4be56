import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { KeysSpec } from "./spec.ts";

export const briefing: SystemBriefing<KeysSpec> = {
  cards: (spec) =>
    cardsWhere(
      [
        true,
        card("keys.whichKey", "living", {
          chance: 0.04,
          costPence: COST.middling,
          minutes: 1.5,
          handsOn: true,
          caution: true,
          facts: { keys: spec.keysPerSet * spec.sets },
        }),
      ],
      [
        true,
        card(spec.deadLock ? "keys.wayOutDeadLock" : "keys.wayOut", "night", {
          chance: 0.02,
          costPence: COST.injury,
          minutes: 0.5,
          must: true,
          handsOn: true,
          caution: true,
        }),
      ],
      [true, card("keys.lost", "danger", { chance: 0.01, costPence: COST.large, minutes: 0.5 })],
      [spec.alarm, card("keys.alarmNight", "night", { chance: 0.2, costPence: COST.trifle, minutes: 0.5 })],
    ),
};
