import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere, isFrosty } from "../telling.ts";
import type { TyresSpec } from "./spec.ts";

export const briefing: SystemBriefing<TyresSpec> = {
  cards: (spec, situation) =>
    cardsWhere(
      [
        true,
        card(`tyres.puncture${PUNCTURE[spec.spare]}`, "danger", {
          chance: 0.05,
          costPence: COST.small,
          minutes: 1,
          caution: true,
        }),
      ],
      [true, card("tyres.kerbs", "beforeDriving", { chance: 0.1, costPence: COST.small, minutes: 0.5 })],
      [
        isFrosty(situation),
        card("tyres.chains", "beforeDriving", {
          chance: 0.03,
          costPence: COST.large,
          minutes: 1,
          caution: true,
        }),
      ],
      [true, card("tyres.light", "danger", { chance: 0.05, costPence: COST.small, minutes: 0.5 })],
      [
        true,
        card("tyres.pressures", "beforeDriving", {
          chance: 0.1,
          costPence: COST.middling,
          minutes: 1,
          facts: {
            frontBar: spec.pressureFrontBar,
            rearBar: spec.pressureRearBar,
            frontPsi: toPsi(spec.pressureFrontBar),
            rearPsi: toPsi(spec.pressureRearBar),
          },
        }),
      ],
    ),
};

const PUNCTURE = { spare: "Spare", sealant: "Sealant", none: "None" } as const;

/** 1 bar = 14.504 psi (by definition of both units). */
function toPsi(bar: number): number {
  return Math.round(bar * 14.504);
}
