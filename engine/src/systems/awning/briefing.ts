import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { AwningSpec } from "./spec.ts";

/** Where a vehicle that only parks may not put anything out (ES: DGT PROT 2023/14; IT: art. 185; DE, FR, AT, DK, PT: secondary or from memory). */
const PARKED_IS_NOT_CAMPING = ["ES", "IT", "DE", "FR", "AT", "DK", "PT"];

export const briefing: SystemBriefing<AwningSpec> = {
  cards: (_spec, situation) =>
    cardsWhere(
      [
        true,
        card("awning.wind", "living", { chance: 0.2, costPence: COST.large, minutes: 1.5, question: true }),
      ],
      [
        true,
        card("awning.putOut", "onArriving", {
          chance: 0.2,
          costPence: COST.large,
          minutes: 6,
          handsOn: true,
          caution: true,
        }),
      ],
      [
        true,
        card("awning.inBeforeLeaving", "leavingPitch", { chance: 0.05, costPence: COST.heavy, minutes: 0.5 }),
      ],
      [
        true,
        card("awning.nothingBurnsUnder", "danger", {
          chance: 0.05,
          costPence: COST.injury,
          minutes: 0.5,
          must: true,
          caution: true,
        }),
      ],
      [true, card("awning.dryIt", "returning", { chance: 0.15, costPence: COST.middling, minutes: 0.5 })],
      [
        PARKED_IS_NOT_CAMPING.includes(situation.country),
        card("awning.whereAllowed", "onArriving", { chance: 0.2, costPence: COST.small, minutes: 0.5 }),
      ],
    ),
};
