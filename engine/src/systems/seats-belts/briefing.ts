import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { SeatsBeltsSpec } from "./spec.ts";

export const briefing: SystemBriefing<SeatsBeltsSpec> = {
  cards: (spec, situation) =>
    cardsWhere(
      [
        true,
        card("seatsBelts.whoSitsWhere", "beforeDriving", {
          chance: 0.05,
          costPence: COST.injury,
          minutes: 1,
          must: true,
          caution: true,
          question: true,
          facts: { belts: spec.beltedSeats },
        }),
      ],
      [
        situation.children > 0,
        card("seatsBelts.childSeats", "beforeDriving", {
          chance: 0.15,
          costPence: COST.injury,
          minutes: 4,
          must: true,
          handsOn: true,
          caution: true,
          facts: { isofix: spec.isofixPlaces },
        }),
      ],
      [
        spec.petsAllowed && situation.dogs !== 0,
        card("seatsBelts.pets", "beforeDriving", {
          chance: 0.05,
          costPence: COST.middling,
          minutes: 0.5,
          caution: true,
        }),
      ],
      [
        spec.swivel,
        card("seatsBelts.swivel", "beforeDriving", {
          chance: 0.1,
          costPence: COST.small,
          minutes: 1,
          handsOn: true,
        }),
      ],
    ),
};
