import type { SystemBriefing } from "../contract.ts";
import { COST, card } from "../telling.ts";
import type { BikeRackSpec } from "./spec.ts";

export const briefing: SystemBriefing<BikeRackSpec> = {
  cards: (spec, { country }) => [
    ...(country === "IT" || country === "ES" ? [board] : []),
    card("bikeRack.load", "beforeDriving", {
      chance: 0.1,
      costPence: COST.large,
      minutes: 3,
      handsOn: true,
      caution: true,
      question: true,
      facts: { bikes: spec.bikes, bikesKg: Math.max(0, Math.floor(spec.maxKg - spec.massKg)) },
    }),
    card("bikeRack.behindYou", "leavingPitch", { chance: 0.1, costPence: COST.middling, minutes: 0.5 }),
  ],
};

/** Overhanging loads carry a striped board of 50 cm in Italy (read in a secondary source) and Spain (from memory). */
const board = card("bikeRack.board", "beforeDriving", {
  chance: 0.3,
  costPence: COST.small,
  minutes: 1,
  handsOn: true,
  caution: true,
});
