import type { IsoDate } from "../base/time.ts";
import type { Rule, RuleCase } from "./rule.ts";

/** What a rule's case looks at. An unladen mass that nobody stated is null. */
export interface CaseFacts {
  readonly mamKg: number;
  readonly technicalMaxKg: number;
  readonly unladenKg: number | null;
  readonly category: "M1" | "N1";
  readonly heightM: number;
  readonly overhang: boolean;
  readonly plateLacksUk: boolean;
  readonly fuel: "diesel" | "petrol" | "electric" | "hydrogen";
  readonly firstRegistered: IsoDate;
}

/**
 * Whether a rule's case is met by this vehicle and load, by the mass that the rule itself names (kg), the
 * height (m), the fuel and the day of first registration. Where that mass is not known, the case above a limit is taken as met and the one below as not:
 * the stricter reading.
 */
export function ruleApplies(when: RuleCase | undefined, facts: CaseFacts): boolean {
  if (when === undefined) return true;
  if (!registrationMeets(when, facts)) return false;
  if (when.orHeightAboveM !== undefined && facts.heightM > when.orHeightAboveM) return true;
  return (
    massMeets(when, facts) &&
    (when.category === undefined || when.category === facts.category) &&
    (when.heightToM === undefined || facts.heightM <= when.heightToM) &&
    (when.overhang === undefined || when.overhang === facts.overhang) &&
    (when.plateLacksUk === undefined || when.plateLacksUk === facts.plateLacksUk) &&
    (when.fuel === undefined || when.fuel === facts.fuel) &&
    (when.technicalAboveKg === undefined || facts.technicalMaxKg > when.technicalAboveKg)
  );
}

/** Whether a rule is for this vehicle and load: its case is met, and that of its exemption is not. */
export const isRuleFor = ({ when, exempt }: Pick<Rule, "when" | "exempt">, facts: CaseFacts): boolean =>
  ruleApplies(when, facts) && (exempt === undefined || !ruleApplies(exempt, facts));

const registrationMeets = (
  { registeredFrom, registeredBefore }: RuleCase,
  { firstRegistered }: CaseFacts,
): boolean =>
  (registeredFrom === undefined || firstRegistered >= registeredFrom) &&
  (registeredBefore === undefined || firstRegistered < registeredBefore);

function massMeets(when: RuleCase, facts: CaseFacts): boolean {
  if (when.mass === undefined) return true;
  const kg = { mam: facts.mamKg, technical: facts.technicalMaxKg, unladen: facts.unladenKg }[when.mass];
  if (kg === null) return when.toKg === undefined;
  return (when.aboveKg === undefined || kg > when.aboveKg) && (when.toKg === undefined || kg <= when.toKg);
}
