import type { BriefingCard, SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere, isAbroad, sideWord } from "../telling.ts";
import type { LpgSpec } from "./spec.ts";

export const briefing: SystemBriefing<LpgSpec> = {
  cards: (spec, situation) => {
    const isExchange = spec.arrangement === "exchange";
    const abroad = isAbroad(situation);
    return cardsWhere(
      [true, openAndShut(spec)],
      [true, onTheMove(spec)],
      [true, smell],
      [true, card("lpg.taps", "living", { chance: 0.1, costPence: COST.trifle, minutes: 1, handsOn: true })],
      [true, howMuch(spec)],
      [isExchange && spec.cylinders > 1, changeBottle(spec)],
      [!isExchange, refill(spec, abroad)],
      [
        isExchange,
        card("lpg.neverFill", "filling", {
          chance: abroad ? 0.05 : 0.02,
          costPence: COST.injury,
          minutes: 0.5,
          must: true,
          caution: true,
        }),
      ],
      [
        spec.fuel === "butane" && situation.coldestNightC < 4,
        card("lpg.butaneCold", "night", { chance: 0.5, costPence: COST.small, minutes: 1, question: true }),
      ],
      [
        abroad,
        card("lpg.crossing", "beforeDriving", {
          chance: 0.2,
          costPence: COST.middling,
          minutes: 1,
          caution: true,
        }),
      ],
    );
  },
};

const smell = card("lpg.smell", "danger", {
  chance: 0.02,
  costPence: COST.injury,
  minutes: 1.5,
  must: true,
  caution: true,
  question: true,
});

const openAndShut = (spec: LpgSpec): BriefingCard =>
  card("lpg.openShut", "onArriving", {
    chance: 0.25,
    costPence: COST.small,
    minutes: 3,
    must: true,
    handsOn: true,
    caution: true,
    question: true,
    facts: { side: sideWord(spec.side) },
  });

const onTheMove = (spec: LpgSpec): BriefingCard =>
  card(spec.impactShutoff ? "lpg.onTheMoveProtected" : "lpg.onTheMoveShut", "beforeDriving", {
    chance: 0.1,
    costPence: COST.injury,
    minutes: 1,
    must: true,
    handsOn: true,
    caution: true,
  });

const howMuch = (spec: LpgSpec): BriefingCard =>
  card(spec.arrangement === "exchange" ? "lpg.howMuchBottle" : "lpg.howMuchTank", "living", {
    chance: 0.3,
    costPence: COST.trifle,
    minutes: 1,
    facts: { totalKg: spec.cylinders * spec.kgEach, cylinders: spec.cylinders },
  });

const changeBottle = (spec: LpgSpec): BriefingCard =>
  card(spec.automaticChangeOver ? "lpg.changeAutomatic" : "lpg.changeBottle", "living", {
    chance: 0.3,
    costPence: COST.small,
    minutes: 4,
    handsOn: true,
    caution: true,
    question: true,
  });

const refill = (spec: LpgSpec, abroad: boolean): BriefingCard =>
  card("lpg.refill", "filling", {
    chance: abroad ? 0.4 : 0.2,
    costPence: COST.large,
    minutes: 4,
    must: true,
    handsOn: true,
    caution: true,
    question: true,
    facts: { side: sideWord(spec.side) },
  });
