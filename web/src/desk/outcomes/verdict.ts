import type { Schemas } from "../../api/client.ts";

/** A band for eight in ten is as meant while it holds 70 to 90 %; on the whole a tenth either way (practice). */
const BAND = { least: 0.7, most: 0.9 } as const;
const MOST_BIAS = 0.1;
/** Under so many outcomes too little is known: with 40 a band that is right misses 70 to 90 % one time in fourteen. */
export const FEWEST = 40;
export type Verdict = "few" | "good" | "narrow" | "wide" | "high" | "low";

/** What is to be said of the forecasts of a store: a bias first, since it makes the band miss too. */
export function verdictOf({ count, coverage, bias }: Schemas["ForecastJudgement"]): Verdict {
  if (count < FEWEST) return "few";
  if (bias.value > MOST_BIAS) return "high";
  if (bias.value < -MOST_BIAS) return "low";
  if (coverage.value < BAND.least) return "narrow";
  return coverage.value > BAND.most ? "wide" : "good";
}
