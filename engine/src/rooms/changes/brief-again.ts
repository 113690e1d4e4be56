import { figure } from "../../base/figure.ts";
import type { BriefingCard, BriefingSituation } from "../../systems/contract.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";
import { type ChosenCard, chooseCards, vehicleFacts } from "../briefing/choose-cards.ts";
import type { BriefAgain } from "./types.ts";

/** Cards whose text says how big the vehicle is; a test holds this list to the words. */
export const CARDS_ON_SIZE: readonly string[] = ["cab.height", "cab.tailSwing", "cab.width"];

type Described = Pick<VehicleDescription, "systems" | "dimensions">;

/**
 * What a hirer who was briefed on one vehicle has to be told again for another: cards that are new, and cards
 * that say or ask for something else. Cards that are the same in every figure need not be shown twice.
 * @throws BadInput where a fitted system is not valid
 */
export function briefAgain(
  oldVehicle: Described,
  newVehicle: Described,
  situation: BriefingSituation,
): BriefAgain {
  const before = new Map(chooseCards(oldVehicle, situation).map((chosen) => [chosen.card.id, chosen]));
  const after = chooseCards(newVehicle, situation);
  const sizes = vehicleFacts(newVehicle.dimensions);
  const again = after.flatMap((chosen) => {
    const known = before.get(chosen.card.id);
    if (known !== undefined && sayOf(known, sizes) === sayOf(chosen, sizes)) return [];
    return [{ ...chosen, why: known === undefined ? ("new" as const) : ("different" as const) }];
  });
  const changed = new Set(again.map(({ card }) => card.id));
  const there = new Set(after.map(({ card }) => card.id));
  const minutes = again.reduce((sum, { card }) => sum + card.minutes, 0);
  return {
    again,
    same: after.map(({ card }) => card.id).filter((id) => !changed.has(id)),
    gone: [...before.keys()].filter((id) => !there.has(id)),
    minutes: figure(minutes, "min", "-", { cards: again.length }, "default", "practice"),
  };
}

/** Everything that a hirer would notice of a card, as text to compare. */
function sayOf({ card, systemKind }: ChosenCard, sizes: Readonly<Record<string, number>>): string {
  const { chance: _, costPence: __, minutes: ___, facts, ...rest } = card;
  const shown = Object.entries(facts).filter(([name]) => CARDS_ON_SIZE.includes(card.id) || !(name in sizes));
  return JSON.stringify([systemKind, rest satisfies Partial<BriefingCard>, shown.sort()]);
}
