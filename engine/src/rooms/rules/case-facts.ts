import type { CaseFacts } from "../../rules/rule-applies.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";

/** What a rule's case looks at, from the description and from what is carried and shown. */
export function caseFacts(
  { masses, dimensions, category, fuel, firstRegistered }: VehicleDescription,
  { overhang = false, plateLacksUk = false }: { overhang?: boolean; plateLacksUk?: boolean } = {},
): CaseFacts {
  return {
    mamKg: masses.mamKg,
    technicalMaxKg: masses.technicalMaxKg,
    unladenKg: masses.unladenKg ?? null,
    category,
    heightM: dimensions.heightM,
    overhang,
    plateLacksUk,
    fuel,
    firstRegistered,
  };
}
