/** Sums behind the order of a briefing. */
import { between } from "./args.ts";
import { entry } from "./entry.ts";

/** What a hirer's not knowing a thing costs on average, pence: chance that it goes wrong untold × cost then × what is not yet known. */
export function briefingRiskPence(chance: number, costPence: number, notYetKnown: number): number {
  return chance * costPence * notYetKnown;
}

const share = between(0, 1);

export const BRIEFING_FORMULAS = [
  entry(
    "briefing.risk",
    "pence",
    "practice",
    "chance × cost × not yet known",
    { chance: share, costPence: between(0, 100_000_000), notYetKnown: share },
    (a) => briefingRiskPence(a.chance, a.costPence, a.notYetKnown),
  ),
];
