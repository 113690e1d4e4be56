import type { BriefingCard, SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere, isAbroad, sideWord } from "../telling.ts";
import type { HookUpSpec } from "./spec.ts";

export const briefing: SystemBriefing<HookUpSpec> = {
  cards: (spec, situation) =>
    cardsWhere(
      [true, plugIn(spec)],
      [true, unplug],
      [true, whatThePostGives(spec)],
      [spec.hasDrum, uncoil],
      [isAbroad(situation), adaptor],
    ),
};

const plugIn = (spec: HookUpSpec): BriefingCard =>
  card("hookUp.plugIn", "onArriving", {
    chance: 0.2,
    costPence: COST.injury,
    minutes: 4,
    must: true,
    handsOn: true,
    caution: true,
    question: true,
    facts: { side: sideWord(spec.side), leadM: spec.leadLengthM },
  });

const unplug = card("hookUp.unplug", "leavingPitch", {
  chance: 0.08,
  costPence: COST.large,
  minutes: 1,
  must: true,
  handsOn: true,
  caution: true,
});

const whatThePostGives = ({ inletA }: HookUpSpec): BriefingCard =>
  card("hookUp.whatThePostGives", "onArriving", {
    chance: 0.5,
    costPence: COST.trifle,
    minutes: 2,
    question: true,
    facts: { inletA },
  });

const uncoil = card("hookUp.uncoil", "onArriving", {
  chance: 0.2,
  costPence: COST.large,
  minutes: 0.5,
  must: true,
  caution: true,
});

const adaptor = card("hookUp.adaptor", "onArriving", {
  chance: 0.3,
  costPence: COST.middling,
  minutes: 2,
  must: true,
  handsOn: true,
  caution: true,
});
