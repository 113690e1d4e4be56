import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { GarageSpec } from "./spec.ts";

export const briefing: SystemBriefing<GarageSpec> = {
  cards: (spec) =>
    cardsWhere(
      [
        true,
        card("garage.load", "beforeDriving", {
          chance: 0.2,
          costPence: COST.large,
          minutes: 1.5,
          must: true,
          question: true,
          caution: true,
          facts: { maxKg: spec.maxKg },
        }),
      ],
      [
        spec.tiePoints > 0,
        card("garage.tieDown", "beforeDriving", {
          chance: 0.1,
          costPence: COST.middling,
          minutes: 1,
          handsOn: true,
          facts: { tiePoints: spec.tiePoints },
        }),
      ],
      [true, seal],
      [true, vents],
    ),
};

const seal = card("garage.seal", "leavingPitch", { chance: 0.1, costPence: COST.small, minutes: 0.5 });

const vents = card("garage.vents", "danger", {
  chance: 0.03,
  costPence: COST.injury,
  minutes: 0.5,
  must: true,
  caution: true,
  mentions: ["lpg"],
});
