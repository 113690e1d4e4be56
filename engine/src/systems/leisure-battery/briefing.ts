import type { BriefingCard, BriefingSituation, SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { LeisureBatterySpec } from "./spec.ts";

export const briefing: SystemBriefing<LeisureBatterySpec> = {
  cards: (spec, situation) => {
    const isLithium = spec.chemistry === "lfp";
    return cardsWhere(
      [true, lasts(spec, situation)],
      [!isLithium, readVolts(situation)],
      [isLithium, readPercent(situation)],
      [isLithium && situation.coldestNightC < 2, coldCharge],
      [true, whatEatsIt],
      [true, leaveAlone],
    );
  },
};

const lasts = (spec: LeisureBatterySpec, { nightsOffHookUp }: BriefingSituation): BriefingCard =>
  card("leisureBattery.lasts", "living", {
    chance: Math.min(0.6, 0.1 + 0.15 * nightsOffHookUp),
    costPence: COST.middling,
    minutes: 3,
    question: true,
    facts: { usableAh: Math.floor(spec.ratedAh * spec.usableShare) },
  });

const readVolts = ({ nightsOffHookUp }: BriefingSituation): BriefingCard =>
  card("leisureBattery.readVolts", "living", {
    chance: nightsOffHookUp > 0 ? 0.3 : 0.1,
    costPence: COST.middling,
    minutes: 2,
    handsOn: true,
    question: true,
  });

const readPercent = ({ nightsOffHookUp }: BriefingSituation): BriefingCard =>
  card("leisureBattery.readPercent", "living", {
    chance: nightsOffHookUp > 0 ? 0.2 : 0.05,
    costPence: COST.small,
    minutes: 1,
    handsOn: true,
  });

const coldCharge = card("leisureBattery.coldCharge", "night", {
  chance: 0.3,
  costPence: COST.small,
  minutes: 1,
});

const whatEatsIt = card("leisureBattery.whatEatsIt", "living", {
  chance: 0.1,
  costPence: COST.small,
  minutes: 1,
});

const leaveAlone = card("leisureBattery.leaveAlone", "danger", {
  chance: 0.03,
  costPence: COST.large,
  minutes: 1,
  caution: true,
});
