import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { LeisureBatterySpec } from "./spec.ts";

export const briefing: SystemBriefing<LeisureBatterySpec> = {
  cards: (spec, situation) => {
    const isLithium = spec.chemistry === "lfp";
    const usableAh = Math.floor(spec.ratedAh * spec.usableShare);
    const offHookUp = situation.nightsOffHookUp > 0;
    return cardsWhere(
      [
        true,
        card("leisureBattery.lasts", "living", {
          chance: Math.min(0.6, 0.1 + 0.15 * situation.nightsOffHookUp),
          costPence: COST.middling,
          minutes: 3,
          question: true,
          facts: { usableAh },
        }),
      ],
      [
        !isLithium,
        card("leisureBattery.readVolts", "living", {
          chance: offHookUp ? 0.3 : 0.1,
          costPence: COST.middling,
          minutes: 2,
          handsOn: true,
          question: true,
        }),
      ],
      [
        isLithium,
        card("leisureBattery.readPercent", "living", {
          chance: offHookUp ? 0.2 : 0.05,
          costPence: COST.small,
          minutes: 1,
          handsOn: true,
        }),
      ],
      [
        isLithium && situation.coldestNightC < 2,
        card("leisureBattery.coldCharge", "night", { chance: 0.3, costPence: COST.small, minutes: 1 }),
      ],
      [
        true,
        card("leisureBattery.leaveAlone", "danger", {
          chance: 0.03,
          costPence: COST.large,
          minutes: 1,
          caution: true,
        }),
      ],
    );
  },
};
