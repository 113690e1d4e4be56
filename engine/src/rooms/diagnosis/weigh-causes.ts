import { causeWeight } from "../../formulas/diagnosis.ts";
import type { Symptom } from "../../systems/contract.ts";
import type { DiagnosisKnown } from "./types.ts";

/** How many cases that the depot has seen the weights of practice are worth: practice, no source. */
export const HISTORY_STRENGTH = 10;
/** Chance that a check, done and answered with no, has missed its cause: practice, no source. */
export const MISS_CHANCE = 0.1;

export interface WeighedCause {
  readonly cause: string;
  /** not normalised */
  readonly weight: number;
}

/** Weights of practice, moved by what the depot has seen, by the stores and by what was tried. */
export function weighCauses(symptom: Symptom, known: DiagnosisKnown): readonly WeighedCause[] {
  const total = symptom.causes.reduce((sum, { weight }) => sum + weight, 0);
  const counts = new Map<string, number>();
  for (const { cause, count } of known.history ?? []) counts.set(cause, (counts.get(cause) ?? 0) + count);
  const seen = (cause: string) => counts.get(cause) ?? 0;
  const foundOfAll = symptom.causes.reduce((sum, { id }) => sum + seen(id), 0);
  const trouble = new Map((known.stores ?? []).map(({ store, troubleChance }) => [store, troubleChance]));
  const missed = (cause: string) =>
    symptom.checks.filter(
      ({ id, causes }) =>
        causes.includes(cause) &&
        known.answers.some(({ check, answer }) => check === id && answer === "notIt"),
    ).length;
  return symptom.causes.map(({ id, weight, worseWhen }) => ({
    cause: id,
    weight: causeWeight({
      priorShare: weight / total,
      historyStrength: HISTORY_STRENGTH,
      found: seen(id),
      foundOfAll,
      times: worseWhen?.times ?? 1,
      troubleChance: worseWhen === undefined ? 0 : (trouble.get(worseWhen.store) ?? 0),
      missChance: MISS_CHANCE,
      missed: missed(id),
    }),
  }));
}
