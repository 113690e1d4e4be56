/** Short ways to state causes and checks of a fault, and what of them a vehicle keeps. Weights are common practice, no source. */
import type { Cause, FaultCheck, Symptom } from "./contract.ts";

/** A cause with its weight before anything is known. */
export function cause(id: string, weight: number, worseWhen?: Cause["worseWhen"]): Cause {
  return worseWhen === undefined ? { id, weight } : { id, weight, worseWhen };
}

/** A cause about another fitted system, left out where that is not fitted; `leadsTo` is the symptom there to go on with. */
export function causeIn(
  kind: string,
  id: string,
  weight: number,
  more: Pick<Cause, "worseWhen" | "leadsTo"> = {},
): Cause {
  return { id, weight, mentions: [kind], ...more };
}

/** A cause that no hirer can show or mend: what is left is to call. */
export function callFor(id: string, weight: number): Cause {
  return { id, weight, call: true };
}

/** What a hirer may look at (`danger` 0), do and undo (1), or must leave to trained hands (2). */
export function tryThis(
  id: string,
  causes: readonly string[],
  minutes: number,
  danger: FaultCheck["danger"],
  more: { readonly after?: readonly string[]; readonly mentions?: readonly string[] } = {},
): FaultCheck {
  return { id, causes, minutes, danger, after: more.after ?? [], mentions: more.mentions ?? [] };
}

/** A fault at which to stop and call at once; it has no checks. */
export function stopAndCall(id: string, cause: string): Symptom {
  return { id, dangerous: true, causes: [callFor(cause, 1)], checks: [] };
}

/**
 * The symptoms as a vehicle with these kinds fitted has them: causes and checks that speak of a thing which is
 * not fitted are left out, and with them checks left without a cause, orders left without a check, and
 * symptoms left without a cause.
 */
export function keepFitted(symptoms: readonly Symptom[], fitted: ReadonlySet<string>): readonly Symptom[] {
  const stays = ({ mentions }: { readonly mentions?: readonly string[] }) =>
    (mentions ?? []).every((kind) => fitted.has(kind));
  return symptoms.flatMap((symptom) => {
    const causes = symptom.causes.filter(stays);
    if (causes.length === 0) return [];
    const known = new Set(causes.map(({ id }) => id));
    const kept = symptom.checks
      .filter(stays)
      .map((check) => ({ ...check, causes: check.causes.filter((id) => known.has(id)) }))
      .filter((check) => check.causes.length > 0);
    const left = new Set(kept.map(({ id }) => id));
    const checks = kept.map((check) => ({ ...check, after: check.after.filter((id) => left.has(id)) }));
    return [{ ...symptom, causes, checks }];
  });
}
