import type { WalkRound } from "../condition/types.ts";
import type { Terms } from "../quote/types.ts";

/** A thing that walk-rounds count and that is charged when it comes back short. */
export interface CountedThing {
  readonly checkId: string;
  readonly systemKind: string;
  /** what it is charged as where neither it nor its kind has a value; null where as nothing */
  readonly charge: string | null;
  /** walk-rounds that count it */
  readonly vehicles: number;
  /** the name in the terms by which it has a value: its own, its kind's or its charge's; null where nobody has entered one, so that nothing can be charged for it */
  readonly pricedBy: string | null;
}

/** What these walk-rounds count, each thing once, with the value in the terms that a settlement would take for it. */
export function listCountedThings(
  rounds: readonly WalkRound[],
  kit: Terms["tariff"]["kit"],
): readonly CountedThing[] {
  const found = new Map<string, CountedThing>();
  for (const { steps } of rounds) {
    for (const check of steps.flatMap(({ checks }) => checks)) {
      if (check.kind !== "count") continue;
      const { id: checkId, systemKind, charge = null } = check;
      const pricedBy = [checkId, systemKind, charge ?? ""].find((name) => kit[name] !== undefined) ?? null;
      const vehicles = (found.get(checkId)?.vehicles ?? 0) + 1;
      found.set(checkId, { checkId, systemKind, charge, vehicles, pricedBy });
    }
  }
  return [...found.values()];
}
