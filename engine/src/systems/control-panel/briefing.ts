import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere } from "../telling.ts";
import type { ControlPanelSpec } from "./spec.ts";

export const briefing: SystemBriefing<ControlPanelSpec> = {
  cards: (spec, situation) =>
    cardsWhere(
      [
        spec.masterSwitch,
        card("controlPanel.master", "living", {
          chance: situation.firstTime ? 0.3 : 0.1,
          costPence: COST.small,
          minutes: 1,
          handsOn: true,
          question: true,
        }),
      ],
      [spec.pumpSwitch, pumpOff],
      [spec.gauges !== "none", gauges(spec)],
      [spec.showsCabBattery, twoBatteries],
      [true, fuses],
    ),
};

const pumpOff = card("controlPanel.pumpOff", "leavingPitch", {
  chance: 0.1,
  costPence: COST.middling,
  minutes: 0.5,
  handsOn: true,
  mentions: ["freshWater"],
});

const gauges = (spec: ControlPanelSpec) =>
  card(spec.gauges === "lamps" ? "controlPanel.gaugeLamps" : "controlPanel.gaugePercent", "living", {
    chance: 0.25,
    costPence: COST.trifle,
    minutes: 1,
  });

const twoBatteries = card("controlPanel.twoBatteries", "living", {
  chance: 0.2,
  costPence: COST.small,
  minutes: 0.5,
  mentions: ["leisureBattery"],
});

const fuses = card("controlPanel.fuses", "danger", {
  chance: 0.05,
  costPence: COST.middling,
  minutes: 0.5,
  caution: true,
});
