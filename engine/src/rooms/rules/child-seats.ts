import { type Figure, figure } from "../../base/figure.ts";
import type { Finding } from "../../base/finding.ts";
import { rulesDuring } from "../../rules/rule-at.ts";
import { makeFinding } from "../make-finding.ts";
import type { Traveller } from "../situation.ts";
import type { SeatsInput } from "./types.ts";

/** What a country asks for children; what it does not ask for is left out. */
interface ChildRules {
  readonly country: string;
  readonly belowCm?: Figure;
  readonly belowYears?: Figure;
  readonly belowKg?: Figure;
  readonly rearBelowYears?: Figure;
}

/**
 * Restraints for children by Great Britain's rules and by those of each country of the route, and places in the
 * rear, on every day of the hire. Of a country whose rules for children are not in the data a note says so.
 */
export function childFindings(input: SeatsInput): { findings: Finding[]; restrained: string[] } {
  const children = input.party.travellers.filter(({ kind }) => kind === "child");
  const home = childRules("GB", input);
  const abroad = [...new Set(input.countries ?? [])]
    .filter((country) => country !== "GB")
    .map((country) => childRules(country, input));
  const atHome = children.filter((child) => needsAtHome(child, home) === true);
  const there = abroad.map((rules) => ({
    rules,
    restrained: children.filter((child) => needsThere(child, rules)),
  }));
  const all = [...atHome, ...there.flatMap(({ restrained }) => restrained)];
  return {
    findings: [
      ...children.filter((child) => needsAtHome(child, home) === null).map((child) => unknown(child, home)),
      ...(atHome.length === 0 ? [] : [restraints(atHome.length, home)]),
      ...there.flatMap(({ rules, restrained }) => restraintsThere(restrained.length, rules)),
      ...abroad.flatMap((rules) => inRear(children, rules)),
      ...(children.length === 0 ? [] : abroad.flatMap(notInData)),
    ],
    restrained: [...new Set(all.map(({ id }) => id))],
  };
}

/** The figures of a country on the days of the hire; of a rule that changes meanwhile the one that reaches further. */
function childRules(country: string, { today, days }: SeatsInput): ChildRules {
  const { first, last } = days ?? { first: today, last: today };
  const bound = (end: string) => {
    const versions = rulesDuring(`seats.${country.toLowerCase()}.${end}`, first, last);
    const widest = [...versions].sort((a, b) => Number(b.value) - Number(a.value))[0];
    if (widest === undefined) return undefined;
    const basis = widest.confidence === "memory" ? "from memory" : "declared";
    return figure(Number(widest.value), widest.unit, "-", { readOn: widest.readOn }, basis, widest.id);
  };
  const found = {
    belowCm: bound("childRestraint.belowCm"),
    belowYears: bound("childRestraint.belowYears"),
    belowKg: bound("childRestraint.belowKg"),
    rearBelowYears: bound("rear.belowYears"),
  };
  const known = Object.entries(found).filter(([, value]) => value !== undefined);
  return { country, ...Object.fromEntries(known) };
}

/** Null where age or height is not known and decides. */
function needsAtHome({ ageYears, heightCm }: Traveller, { belowCm, belowYears }: ChildRules): boolean | null {
  if (belowCm === undefined || belowYears === undefined)
    throw new Error("no rule for the height or the age of a child restraint");
  if (ageYears !== undefined && ageYears >= belowYears.value) return false;
  if (heightCm !== undefined && heightCm >= belowCm.value) return false;
  return ageYears === undefined || heightCm === undefined ? null : true;
}

/** Needed until one of the limits is known to be reached. */
function needsThere(
  { ageYears, heightCm, massKg }: Traveller,
  { belowCm, belowYears, belowKg }: ChildRules,
): boolean {
  const reached = (value: number | undefined, limit: Figure | undefined) =>
    value !== undefined && limit !== undefined && value >= limit.value;
  const asked = belowCm !== undefined || belowYears !== undefined || belowKg !== undefined;
  return asked && !reached(heightCm, belowCm) && !reached(ageYears, belowYears) && !reached(massKg, belowKg);
}

const sourcesOf = (...figures: (Figure | undefined)[]) =>
  figures.flatMap((each) => (each?.source === undefined ? [] : [each.source]));

const unknown = (child: Traveller, { belowCm, belowYears }: ChildRules) =>
  makeFinding("seats", "seats.childUnknown", "unchecked", "law", {
    about: child.id,
    facts: { child: child.name ?? child.id, belowCm: belowCm!, belowYears: belowYears!.value },
    sources: sourcesOf(belowCm, belowYears),
    mends: ["seats.askAgeAndHeight"],
  });

const restraints = (count: number, { belowCm, belowYears }: ChildRules) =>
  makeFinding("seats", "seats.childRestraint", "condition", "law", {
    facts: { count, belowCm: belowCm!, belowYears: belowYears!.value },
    sources: sourcesOf(belowCm, belowYears),
    mends: ["seats.bringRestraint"],
  });

function restraintsThere(count: number, { country, belowCm, belowKg }: ChildRules): Finding[] {
  if (count === 0) return [];
  const facts = { country, count, ...(belowCm && { belowCm }), ...(belowKg && { belowKg }) };
  return [
    makeFinding("seats", "seats.childRestraintAbroad", "condition", "law", {
      about: country,
      facts,
      sources: sourcesOf(belowCm, belowKg),
      mends: ["seats.bringRestraint"],
    }),
  ];
}

/** A child whose age nobody said is taken as one who must sit there. */
function inRear(children: readonly Traveller[], { country, rearBelowYears }: ChildRules): Finding[] {
  if (rearBelowYears === undefined) return [];
  const count = children.filter(({ ageYears }) => (ageYears ?? 0) < rearBelowYears.value).length;
  if (count === 0) return [];
  return [
    makeFinding("seats", "seats.childInRear", "condition", "law", {
      about: country,
      facts: { country, count, belowYears: rearBelowYears.value },
      sources: sourcesOf(rearBelowYears),
      mends: ["seats.seatInRear"],
    }),
  ];
}

const notInData = (rules: ChildRules): Finding[] =>
  Object.keys(rules).length > 1
    ? []
    : [
        makeFinding("seats", "seats.childRulesAbroad", "note", "law", {
          about: rules.country,
          facts: { country: rules.country },
          mends: ["countries.askLocally"],
        }),
      ];
