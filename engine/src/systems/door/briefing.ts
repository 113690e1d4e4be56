import type { SystemBriefing } from "../contract.ts";
import { COST, card, cardsWhere, sideWord } from "../telling.ts";
import type { DoorSpec } from "./spec.ts";

export const briefing: SystemBriefing<DoorSpec> = {
  cards: (spec) =>
    cardsWhere(
      [spec.type === "hinged", wind],
      [spec.type === "sliding", sliding],
      [spec.flyScreen, flyScreen],
      [
        true,
        card("door.wayOut", "danger", {
          chance: 0.02,
          costPence: COST.injury,
          minutes: 0.5,
          must: true,
          handsOn: true,
          facts: { side: sideWord(spec.side) },
        }),
      ],
      [true, shut],
    ),
};

const wind = card("door.wind", "living", { chance: 0.06, costPence: COST.middling, minutes: 0.5 });
const sliding = card("door.sliding", "living", {
  chance: 0.08,
  costPence: COST.middling,
  minutes: 0.5,
  handsOn: true,
});
const flyScreen = card("door.flyScreen", "living", {
  chance: 0.1,
  costPence: COST.small,
  minutes: 0.5,
  handsOn: true,
});
const shut = card("door.shut", "beforeDriving", { chance: 0.03, costPence: COST.large, minutes: 0.5 });
