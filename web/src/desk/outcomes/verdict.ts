import type { Schemas } from "../../api/client.ts";

/** A band for eight in ten is as meant while it holds 70 to 90 %; on the whole a tenth either way (practice). */
const BAND = { least: 0.7, most: 0.9 } as const;
const MOST_BIAS = 0.1;
export type Verdict = "good" | "narrow" | "wide" | "high" | "low";

/** What is to be said of the forecasts of a store: a bias first, since it makes the band miss too. */
export function verdictOf({ coverage, bias }: Schemas["ForecastJudgement"]): Verdict {
  if (bias.value > MOST_BIAS) return "high";
  if (bias.value < -MOST_BIAS) return "low";
  if (coverage.value < BAND.least) return "narrow";
  return coverage.value > BAND.most ? "wide" : "good";
}
