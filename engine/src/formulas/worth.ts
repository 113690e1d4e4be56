/** What a used thing is still worth. */
import { above0, between } from "./args.ts";
import { entry } from "./entry.ts";

/** Share of the new value left after so many years of an even loss over its life, never below the least share. */
export function remainingShare(ageYears: number, lifeYears: number, leastShare: number): number {
  return Math.max(leastShare, 1 - ageYears / lifeYears);
}

export const WORTH_FORMULAS = [
  entry(
    "worth.remainingShare",
    "share",
    "rental-code-2020",
    "damage: no betterment; the even loss is common practice",
    { ageYears: between(0, 60), lifeYears: above0(60), leastShare: between(0, 1) },
    (a) => remainingShare(a.ageYears, a.lifeYears, a.leastShare),
  ),
];
