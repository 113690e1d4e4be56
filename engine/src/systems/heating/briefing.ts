import type { BriefingCard, BriefingSituation, SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere, isFrosty } from "../telling.ts";
import type { HeatingSpec } from "./spec.ts";

export const briefing: SystemBriefing<HeatingSpec> = {
  cards: (spec, situation) => {
    const burns = spec.source !== "electric";
    const hasElectric = spec.source !== "gas" && spec.source !== "diesel";
    return cardsWhere(
      [true, switchOn(spec, situation)],
      [hasElectric, electricStage(spec)],
      [burns, flue(situation)],
      [burns, offAtPump],
      [true, outlets],
      [burns && situation.nightsOffHookUp > 0, fanEatsBattery(situation)],
      [spec.source.startsWith("diesel"), dieselTank],
      [isFrosty(situation), nightFrost],
    );
  },
};

const SWITCH_ON = {
  gas: "Gas",
  gasElectric: "GasElectric",
  diesel: "Diesel",
  dieselElectric: "DieselElectric",
  electric: "Electric",
} as const;

const isCold = ({ coldestNightC }: BriefingSituation): boolean => coldestNightC < 12;

const switchOn = ({ source }: HeatingSpec, situation: BriefingSituation): BriefingCard =>
  card(`heating.switchOn${SWITCH_ON[source]}`, "living", {
    chance: isCold(situation) ? 0.4 : 0.2,
    costPence: COST.middling,
    minutes: 4,
    handsOn: true,
    question: true,
    mentions: source === "gas" || source === "gasElectric" ? ["lpg"] : [],
  });

const electricStage = ({ electricW }: HeatingSpec): BriefingCard =>
  card("heating.electricStage", "onArriving", {
    chance: 0.35,
    costPence: COST.trifle,
    minutes: 2,
    question: true,
    mentions: ["hookUp"],
    facts: { fullW: electricW, halfW: Math.round(electricW / 2) },
  });

const flue = (situation: BriefingSituation): BriefingCard =>
  card("heating.flue", "danger", {
    chance: isFrosty(situation) ? 0.05 : 0.02,
    costPence: COST.injury,
    minutes: 1,
    must: true,
    caution: true,
    question: true,
  });

const outlets = card("heating.outlets", "night", {
  chance: 0.05,
  costPence: COST.middling,
  minutes: 0.5,
  caution: true,
});

const offAtPump = card("heating.offAtPump", "filling", {
  chance: 0.05,
  costPence: COST.injury,
  minutes: 0.5,
  must: true,
  caution: true,
});

const fanEatsBattery = (situation: BriefingSituation): BriefingCard =>
  card("heating.fanEatsBattery", "night", {
    chance: isCold(situation) ? 0.4 : 0.1,
    costPence: COST.small,
    minutes: 1,
    mentions: ["leisureBattery"],
  });

const dieselTank = card("heating.dieselTank", "night", {
  chance: 0.2,
  costPence: COST.small,
  minutes: 0.5,
  mentions: ["fuel"],
});

const nightFrost = card("heating.nightFrost", "night", { chance: 0.3, costPence: COST.large, minutes: 1 });
