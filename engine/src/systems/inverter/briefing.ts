import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { InverterSpec } from "./spec.ts";

export const briefing: SystemBriefing<InverterSpec> = {
  cards: (spec, situation) =>
    cardsWhere(
      [
        true,
        card("inverter.use", "living", {
          chance: situation.nightsOffHookUp > 0 ? 0.3 : 0.1,
          costPence: COST.small,
          minutes: 1.5,
          handsOn: true,
          question: true,
          facts: { ratedW: spec.ratedW },
        }),
      ],
      [
        true,
        card(spec.source === "tractionBattery" ? "inverter.eatsRange" : "inverter.eatsBattery", "living", {
          chance: situation.nightsOffHookUp > 0 ? 0.35 : 0.05,
          costPence: COST.small,
          minutes: 1,
          mentions: [spec.source],
          // what a kettle of 2 kW would take in five minutes, Ah at 12 V
          ...(spec.source === "tractionBattery"
            ? {}
            : { facts: { kettleAh: Math.round(2000 / 12 / 12 / spec.efficiency) } }),
        }),
      ],
      [spec.runs === "sockets", notHob],
      [true, live],
    ),
};

const notHob = card("inverter.socketsOnly", "living", {
  chance: 0.15,
  costPence: COST.small,
  minutes: 0.5,
});

const live = card("inverter.live", "danger", {
  chance: 0.02,
  costPence: COST.injury,
  minutes: 0.5,
  must: true,
  caution: true,
});
