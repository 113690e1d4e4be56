import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere, sideWord } from "../telling.ts";
import type { FuelSpec } from "./spec.ts";

export const briefing: SystemBriefing<FuelSpec> = {
  cards: (spec) =>
    cardsWhere(
      [
        true,
        card(isDiesel(spec) ? "fuel.fillDiesel" : "fuel.fillPetrol", "filling", {
          chance: 0.03,
          costPence: COST.heavy,
          minutes: 2,
          handsOn: true,
          question: true,
          facts: { side: sideWord(spec.side), grade: spec.grade },
        }),
      ],
      [
        true,
        card("fuel.wrongFuel", "danger", {
          chance: 0.02,
          costPence: COST.heavy,
          minutes: 0.5,
          must: true,
          caution: true,
        }),
      ],
      [true, card("fuel.fullOnReturn", "returning", { chance: 0.25, costPence: COST.small, minutes: 0.5 })],
    ),
};

function isDiesel({ grade }: FuelSpec): boolean {
  return grade !== "E5" && grade !== "E10";
}
