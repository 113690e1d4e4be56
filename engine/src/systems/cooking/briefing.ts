import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { CookingSpec } from "./spec.ts";

export const briefing: SystemBriefing<CookingSpec> = {
  cards: (spec) => {
    const isGas = spec.energy === "gas";
    return cardsWhere(
      [isGas, light],
      [isGas, neverHeat],
      [spec.glassLid, lid],
      [true, pans],
      [!isGas, induction],
      [!isGas, onPost(spec)],
      [!isGas, onInverter(spec)],
      [spec.oven, spec.energy === "gas" ? grill : grillElectric],
    );
  },
};

const light = card("cooking.light", "living", {
  chance: 0.15,
  costPence: COST.injury,
  minutes: 2,
  must: true,
  handsOn: true,
  caution: true,
  question: true,
  mentions: ["lpg"],
});

const neverHeat = card("cooking.neverHeat", "danger", {
  chance: 0.05,
  costPence: COST.injury,
  minutes: 0.5,
  must: true,
  caution: true,
});

const pans = card("cooking.pans", "living", { chance: 0.1, costPence: COST.small, minutes: 0.5 });

const lid = card("cooking.lid", "living", { chance: 0.12, costPence: COST.middling, minutes: 0.5 });

const induction = card("cooking.induction", "living", {
  chance: 0.2,
  costPence: COST.trifle,
  minutes: 1,
  handsOn: true,
  caution: true,
});

/** Amperes that every plate at full power takes from the post. */
const fullAmperes = ({ burners, electricKwEach }: CookingSpec) =>
  Math.ceil((burners * electricKwEach) / 0.23);

const onPost = (spec: CookingSpec) =>
  card("cooking.inductionPost", "onArriving", {
    chance: 0.25,
    costPence: COST.trifle,
    minutes: 0.5,
    mentions: ["hookUp"],
    facts: { amperes: fullAmperes(spec) },
  });

const onInverter = (_spec: CookingSpec) =>
  card("cooking.inductionInverter", "living", {
    chance: 0.25,
    costPence: COST.small,
    minutes: 0.5,
    mentions: ["inverter"],
  });

const grill = card("cooking.grill", "living", {
  chance: 0.1,
  costPence: COST.small,
  minutes: 1,
  handsOn: true,
  caution: true,
});

const grillElectric = card("cooking.grillElectric", "living", {
  chance: 0.1,
  costPence: COST.small,
  minutes: 0.5,
  caution: true,
});
