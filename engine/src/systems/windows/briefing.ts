import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { WindowsSpec } from "./spec.ts";

export const briefing: SystemBriefing<WindowsSpec> = {
  cards: (spec) =>
    cardsWhere(
      [
        spec.rooflights > 0,
        card("windows.rooflightsShut", "beforeDriving", {
          chance: 0.06,
          costPence: COST.large,
          minutes: 1,
          handsOn: true,
          question: true,
          facts: { rooflights: spec.rooflights },
        }),
      ],
      [
        spec.hinged > 0,
        card("windows.hinged", "living", {
          chance: 0.06,
          costPence: COST.large,
          minutes: 1.5,
          handsOn: true,
        }),
      ],
      [
        spec.blinds > 0,
        card("windows.blinds", "living", {
          chance: 0.12,
          costPence: COST.small,
          minutes: 0.5,
          handsOn: true,
        }),
      ],
      [true, keepVents],
    ),
};

const keepVents = card("windows.keepVents", "danger", {
  chance: 0.02,
  costPence: COST.injury,
  minutes: 0.5,
  must: true,
  caution: true,
});
