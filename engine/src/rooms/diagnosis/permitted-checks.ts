import type { FaultCheck, Symptom } from "../../systems/contract.ts";
import type { AnsweredCheck, Hands } from "./types.ts";

/**
 * The checks that these hands may still do, in an order that may be kept. A check is out where it needs
 * trained hands and these are a hirer's, where it was answered, or where one that must come before it is out
 * or was not seen through: what nobody looked at first is not relied upon.
 */
export function permittedChecks(
  symptom: Symptom,
  answers: readonly AnsweredCheck[],
  hands: Hands,
): readonly FaultCheck[] {
  if (symptom.dangerous) return [];
  const answerOf = new Map(answers.map(({ check, answer }) => [check, answer]));
  const done = (id: string) => answerOf.has(id) && answerOf.get(id) !== "cannotTell";
  const open = new Map(
    symptom.checks
      .filter(({ id, danger }) => !answerOf.has(id) && (hands === "trained" || danger < 2))
      .map((check) => [check.id, check]),
  );
  for (let before = -1; before !== open.size; ) {
    before = open.size;
    for (const { id, after } of [...open.values()])
      if (!after.every((first) => done(first) || open.has(first))) open.delete(id);
  }
  return [...open.values()];
}
