import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { StepSpec } from "./spec.ts";

export const briefing: SystemBriefing<StepSpec> = {
  cards: (spec) =>
    cardsWhere(
      [
        true,
        card(spec.electric ? "step.inElectric" : "step.inByHand", "beforeDriving", {
          chance: 0.06,
          costPence: COST.large,
          minutes: 0.5,
          handsOn: true,
        }),
      ],
      [
        true,
        card("step.mindIt", "onArriving", {
          chance: 0.05,
          costPence: COST.middling,
          minutes: 0.5,
          caution: true,
        }),
      ],
      [
        spec.door && spec.flyScreen,
        card("step.flyScreen", "living", { chance: 0.1, costPence: COST.small, minutes: 0.5, handsOn: true }),
      ],
    ),
};
