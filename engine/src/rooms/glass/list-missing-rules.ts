import { GATES, type Gate } from "../../base/finding.ts";
import type { IsoDate } from "../../base/time.ts";
import { COUNTRIES_KNOWN } from "../../rules/country-rules.ts";
import type { Rule } from "../../rules/rule.ts";
import { ruleAt } from "../../rules/rule-at.ts";
import { rulesInForce } from "../../rules/rule-book.ts";
import type { GateReading } from "./types.ts";

/** What the data of a country abroad should hold; of the depot's own country the first is not asked. */
export const COUNTRY_TOPICS = [
  "kit",
  "speed",
  "zone",
  "toll",
  "night",
  "lpgFiller",
  "alcohol",
  "season",
] as const;
export type CountryTopic = (typeof COUNTRY_TOPICS)[number];

export const MISSING_KINDS = [
  "gateNotChecked",
  "findingNotChecked",
  "countryNotInData",
  "topicNotInData",
  "ruleUnsettled",
  "ruleFromMemory",
  "ruleSwitchedOff",
] as const;
export type MissingKind = (typeof MISSING_KINDS)[number];

/** One thing that was not checked, or that rests on nothing firm. Never "fine". */
export interface MissingRule {
  readonly kind: MissingKind;
  readonly gate: Gate;
  /** country, topic as `AT.toll`, rule id or code of the finding; the gate itself where the whole gate is meant */
  readonly about: string;
}

export interface MissingRulesInput {
  /** every country of the route, ISO 3166-1 */
  readonly countries: readonly string[];
  /** first day of the hire */
  readonly on: IsoDate;
  readonly gates: readonly GateReading[];
}

/**
 * Lists what nobody and nothing checked for a hire: gates without a look, findings that stand unchecked, countries
 * and topics without rules in the data, and rules that are unsettled, from memory or switched off. In the order of
 * the gates. What is not listed was checked against the data as they are; the law of the place comes first.
 */
export function listMissingRules({ countries, on, gates }: MissingRulesInput): readonly MissingRule[] {
  const route = [...new Set(countries)];
  const missing = [
    ...GATES.flatMap((gate) => ofGate(gate, gates)),
    ...route.flatMap((country) => ofCountry(country, on)),
  ];
  return missing.sort((a, b) => GATES.indexOf(a.gate) - GATES.indexOf(b.gate));
}

function ofGate(gate: Gate, gates: readonly GateReading[]): MissingRule[] {
  const reading = gates.find((each) => each.gate === gate);
  if (reading === undefined || reading.checkedAt === null)
    return [{ kind: "gateNotChecked", gate, about: gate }];
  return reading.findings
    .filter(({ severity, code }) => severity === "unchecked" || code.endsWith(".factNotChecked"))
    .map(({ code, about }) => ({
      kind: "findingNotChecked",
      gate,
      about: about === undefined ? code : `${code} ${about}`,
    }));
}

function ofCountry(country: string, on: IsoDate): MissingRule[] {
  if (!COUNTRIES_KNOWN.includes(country))
    return [{ kind: "countryNotInData", gate: "countries", about: country }];
  return [
    ...COUNTRY_TOPICS.filter(
      (topic) => !rulesInForce().rules.some((rule) => isOf(rule, topic, country) && rule.off === undefined),
    ).map(
      (topic): MissingRule => ({
        kind: "topicNotInData",
        gate: GATE_OF[topic] ?? "countries",
        about: `${country}.${topic}`,
      }),
    ),
    ...[
      ...new Set(
        rulesInForce()
          .rules.filter((rule) => rule.country === country)
          .map(({ id }) => id),
      ),
    ].flatMap((id) => weakness(id, on)),
  ];
}

const isOf = ({ id }: Rule, topic: string, country: string) =>
  id === `${topic}.${country.toLowerCase()}` || id.startsWith(`${topic}.${country.toLowerCase()}.`);

/** Gate that a rule serves, by the first word of its id. */
const GATE_OF: Readonly<Record<string, Gate>> = {
  licence: "licence",
  mass: "masses",
  seats: "seats",
  season: "season",
  due: "dueDates",
  crossing: "crossing",
  settlement: "money",
  vat: "money",
};

function weakness(id: string, on: IsoDate): MissingRule[] {
  const gate = GATE_OF[id.split(".")[0] ?? ""] ?? "countries";
  const rule = ruleAt(id, on);
  if (rule === undefined) {
    const off = rulesInForce().rules.some((each) => each.id === id && each.off !== undefined);
    return off ? [{ kind: "ruleSwitchedOff", gate, about: id }] : [];
  }
  if (rule.unsettled !== undefined) return [{ kind: "ruleUnsettled", gate, about: id }];
  return rule.confidence === "memory" ? [{ kind: "ruleFromMemory", gate, about: id }] : [];
}
