import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { AlarmsSpec } from "./spec.ts";

const compulsory = { chance: 0.02, costPence: COST.injury, must: true, caution: true } as const;

export const briefing: SystemBriefing<AlarmsSpec> = {
  cards: (spec) =>
    cardsWhere(
      [
        spec.carbonMonoxide > 0,
        card("alarms.carbonMonoxide", "danger", { ...compulsory, minutes: 1, handsOn: true, question: true }),
      ],
      [spec.smoke > 0, card("alarms.smoke", "danger", { ...compulsory, minutes: 0.5, handsOn: true })],
      [spec.gas > 0, card("alarms.gas", "danger", { ...compulsory, minutes: 0.5 })],
      [
        spec.extinguishers > 0 || spec.fireBlanket,
        card(spec.extinguishers > 0 ? "alarms.extinguisher" : "alarms.blanket", "danger", {
          ...compulsory,
          minutes: 0.5,
        }),
      ],
    ),
};
