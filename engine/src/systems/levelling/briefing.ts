import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { LevellingSpec } from "./spec.ts";

export const briefing: SystemBriefing<LevellingSpec> = {
  cards: (spec, { firstTime }) =>
    cardsWhere(
      [spec.ramps > 0, ramps(firstTime)],
      [spec.ramps === 0 && spec.chocks > 0, chocks],
      [spec.jacks === "hydraulic", driven],
      [spec.jacks === "crank", crank],
      [spec.jacks !== "none", up],
    ),
};

const ramps = (firstTime: boolean) =>
  card("levelling.ramps", "onArriving", {
    chance: firstTime ? 0.1 : 0.05,
    costPence: COST.middling,
    minutes: 2,
    handsOn: true,
    caution: true,
  });

const chocks = card("levelling.chocks", "onArriving", {
  chance: 0.03,
  costPence: COST.large,
  minutes: 0.5,
  handsOn: true,
});

const driven = card("levelling.jacksDown", "onArriving", {
  chance: 0.1,
  costPence: COST.large,
  minutes: 2.5,
  must: true,
  handsOn: true,
  caution: true,
  question: true,
});

const crank = card("levelling.cranksDown", "onArriving", {
  chance: 0.1,
  costPence: COST.middling,
  minutes: 1.5,
  handsOn: true,
  caution: true,
});

const up = card("levelling.jacksUp", "leavingPitch", {
  chance: 0.06,
  costPence: COST.heavy,
  minutes: 1,
  must: true,
  handsOn: true,
});
