import * as z from "zod/mini";
import { above0, between } from "./args.ts";
import { causeChance, causeWeight, expectedMinutes } from "./diagnosis.ts";
import { entry } from "./entry.ts";

const share = between(0, 1);
const cases = between(0, 1_000_000);

export const DIAGNOSIS_FORMULAS = [
  entry(
    "diagnosis.causeWeight",
    "-",
    "practice",
    "Dirichlet prior and counts × store in trouble × missed checks",
    {
      priorShare: share,
      historyStrength: above0(1000),
      found: cases,
      foundOfAll: cases,
      times: above0(1000),
      troubleChance: share,
      missChance: share,
      missed: z.int().check(z.minimum(0), z.maximum(100)),
    },
    causeWeight,
  ),
  entry(
    "diagnosis.causeChance",
    "share",
    "practice",
    "weight ÷ sum of the weights",
    { weight: between(0, 1_000_000), weightOfAll: above0(1_000_000) },
    (a) => causeChance(a.weight, a.weightOfAll),
  ),
  entry(
    "diagnosis.expectedMinutes",
    "min",
    "practice",
    "sum of minutes × chance that it comes to the check",
    {
      minutes: z.array(between(0, 10_000)).check(z.maxLength(100)),
      reached: z.array(share).check(z.maxLength(100)),
    },
    (a) => expectedMinutes(a.minutes, a.reached),
  ),
];
