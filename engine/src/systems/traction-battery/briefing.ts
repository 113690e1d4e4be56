import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere, isAbroad, isFrosty } from "../telling.ts";
import { rangeKm, type TractionBatterySpec } from "./spec.ts";

export const briefing: SystemBriefing<TractionBatterySpec> = {
  cards: (spec, situation) => {
    const km = Math.floor(rangeKm(spec) / 10) * 10;
    return cardsWhere(
      [
        true,
        card("tractionBattery.range", "beforeDriving", {
          chance: situation.firstTime ? 0.3 : 0.15,
          costPence: COST.middling,
          minutes: 1.5,
          question: true,
          facts: { km },
        }),
      ],
      [
        isFrosty(situation),
        card("tractionBattery.cold", "beforeDriving", {
          chance: 0.3,
          costPence: COST.middling,
          minutes: 0.5,
          facts: { km: Math.floor(km / 1.35 / 10) * 10 },
        }),
      ],
      [spec.fastChargeKw > 0, chargePoint],
      [spec.postChargeA > 0, atPost(spec)],
      [true, noSound],
      [true, afterCrash],
      [isAbroad(situation), abroad],
    );
  },
};

const chargePoint = card("tractionBattery.chargePoint", "filling", {
  chance: 0.3,
  costPence: COST.small,
  minutes: 3,
  handsOn: true,
  question: true,
});

const atPost = ({ postChargeA }: TractionBatterySpec) =>
  card("tractionBattery.atPost", "onArriving", {
    chance: 0.3,
    costPence: COST.small,
    minutes: 1.5,
    caution: true,
    mentions: ["hookUp"],
    facts: { postChargeA },
  });

const noSound = card("tractionBattery.noSound", "beforeDriving", {
  chance: 0.04,
  costPence: COST.heavy,
  minutes: 0.5,
  must: true,
});

const afterCrash = card("tractionBattery.afterCrash", "danger", {
  chance: 0.01,
  costPence: COST.injury,
  minutes: 0.5,
  must: true,
  caution: true,
});

const abroad = card("tractionBattery.abroad", "filling", {
  chance: 0.2,
  costPence: COST.small,
  minutes: 0.5,
});
