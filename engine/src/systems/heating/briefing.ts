import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere, isFrosty } from "../telling.ts";
import type { HeatingSpec } from "./spec.ts";

export const briefing: SystemBriefing<HeatingSpec> = {
  cards: (spec, situation) => {
    const burns = spec.source !== "electric";
    const hasElectric = spec.source === "gasElectric" || spec.source === "electric";
    const cold = situation.coldestNightC < 12;
    return cardsWhere(
      [
        true,
        card(`heating.switchOn${SWITCH_ON[spec.source]}`, "living", {
          chance: cold ? 0.4 : 0.15,
          costPence: COST.small,
          minutes: 4,
          handsOn: true,
          question: true,
          mentions: spec.source === "gas" || spec.source === "gasElectric" ? ["lpg"] : [],
        }),
      ],
      [
        hasElectric,
        card("heating.electricStage", "onArriving", {
          chance: 0.35,
          costPence: COST.trifle,
          minutes: 2,
          question: true,
          mentions: ["hookUp"],
          facts: { fullW: spec.electricW, halfW: Math.round(spec.electricW / 2) },
        }),
      ],
      [
        burns,
        card("heating.flue", "danger", {
          chance: isFrosty(situation) ? 0.05 : 0.02,
          costPence: COST.injury,
          minutes: 1,
          must: true,
          caution: true,
          question: true,
        }),
      ],
      [
        burns,
        card("heating.offAtPump", "filling", {
          chance: 0.05,
          costPence: COST.injury,
          minutes: 0.5,
          must: true,
          caution: true,
        }),
      ],
      [
        burns && situation.nightsOffHookUp > 0,
        card("heating.fanEatsBattery", "night", {
          chance: cold ? 0.4 : 0.1,
          costPence: COST.small,
          minutes: 1,
          mentions: ["leisureBattery"],
        }),
      ],
      [
        spec.source === "diesel",
        card("heating.dieselTank", "night", {
          chance: 0.2,
          costPence: COST.small,
          minutes: 0.5,
          mentions: ["fuel"],
        }),
      ],
      [
        isFrosty(situation),
        card("heating.nightFrost", "night", { chance: 0.3, costPence: COST.large, minutes: 1 }),
      ],
    );
  },
};

const SWITCH_ON = { gas: "Gas", gasElectric: "GasElectric", diesel: "Diesel", electric: "Electric" } as const;
