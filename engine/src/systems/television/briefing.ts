import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { TelevisionSpec } from "./spec.ts";

export const briefing: SystemBriefing<TelevisionSpec> = {
  cards: (spec) =>
    cardsWhere(
      [
        spec.aerial !== "fixed",
        card("television.aerialDown", "leavingPitch", {
          chance: 0.05,
          costPence: COST.large,
          minutes: 0.5,
          handsOn: true,
          caution: true,
        }),
      ],
      [
        spec.aerial === "dish",
        card("television.dish", "living", { chance: 0.2, costPence: COST.trifle, minutes: 0.5 }),
      ],
      [true, card("television.tune", "living", { chance: 0.3, costPence: COST.trifle, minutes: 1 })],
    ),
};
