import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { CabSpec } from "./spec.ts";

export const briefing: SystemBriefing<CabSpec> = {
  cards: (spec, situation) =>
    cardsWhere(
      [
        true,
        card("cab.height", "beforeDriving", {
          chance: situation.firstTime ? 0.06 : 0.03,
          costPence: COST.heavy,
          minutes: 1,
          must: true,
          question: true,
        }),
      ],
      [
        true,
        card(spec.reversingCamera ? "cab.reverseCamera" : "cab.reverse", "beforeDriving", {
          chance: situation.firstTime ? 0.2 : 0.08,
          costPence: COST.large,
          minutes: 2,
        }),
      ],
      [
        true,
        card("cab.width", "beforeDriving", {
          chance: situation.firstTime ? 0.2 : 0.08,
          costPence: COST.small,
          minutes: 1,
          handsOn: true,
        }),
      ],
      [
        true,
        card("cab.nothingLoose", "beforeDriving", {
          chance: 0.2,
          costPence: COST.small,
          minutes: 1,
          handsOn: true,
        }),
      ],
      [true, card("cab.parkIt", "onArriving", { chance: 0.01, costPence: COST.large, minutes: 0.5 })],
      [
        true,
        card("cab.nothingBurnsInside", "danger", {
          chance: 0.03,
          costPence: COST.injury,
          minutes: 0.5,
          must: true,
          caution: true,
        }),
      ],
      [true, card("cab.tailSwing", "leavingPitch", { chance: 0.08, costPence: COST.large, minutes: 1 })],
      [
        spec.ramps > 0,
        card("cab.ramps", "onArriving", {
          chance: 0.1,
          costPence: COST.middling,
          minutes: 1.5,
          caution: true,
        }),
      ],
      [true, card("cab.warningLights", "danger", { chance: 0.05, costPence: COST.heavy, minutes: 0.5 })],
      [
        true,
        card("cab.accident", "danger", { chance: 0.03, costPence: COST.heavy, minutes: 1, caution: true }),
      ],
    ),
};
