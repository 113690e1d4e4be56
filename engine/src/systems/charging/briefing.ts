import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { ChargingSpec } from "./spec.ts";

export const briefing: SystemBriefing<ChargingSpec> = {
  cards: (spec, situation) => {
    const offHookUp = situation.nightsOffHookUp > 0;
    return cardsWhere(
      [
        spec.drivingCharge !== "none",
        card("charging.driving", "living", {
          chance: offHookUp ? 0.3 : 0.1,
          costPence: COST.small,
          minutes: 1,
          mentions: ["leisureBattery"],
          facts: { perHourAh: Math.round(spec.drivingChargeA * 0.8) },
        }),
      ],
      [
        spec.drivingCharge === "none" && offHookUp,
        card("charging.notDriving", "living", {
          chance: 0.5,
          costPence: COST.small,
          minutes: 1,
          mentions: ["leisureBattery"],
        }),
      ],
      [
        spec.mainsChargerA > 0,
        card("charging.mains", "onArriving", {
          chance: 0.1,
          costPence: COST.small,
          minutes: 0.5,
          mentions: ["hookUp", "leisureBattery"],
        }),
      ],
    );
  },
};
