import { figure } from "../../base/figure.ts";
import type { IsoDate } from "../../base/time.ts";
import { COUNTRIES_KNOWN } from "../../rules/country-rules.ts";
import type { Rule } from "../../rules/rule.ts";
import { type CaseFacts, ruleApplies } from "../../rules/rule-applies.ts";
import { ruleAt } from "../../rules/rule-at.ts";
import { rulesInForce } from "../../rules/rule-book.ts";
import { specsOf } from "../../vehicle/specs-of.ts";
import type { CardLine, CountriesInput, CountryCard } from "./abroad-types.ts";
import { ROADS } from "./abroad-types.ts";

const line = (rule: Rule): CardLine => ({
  ruleId: rule.id,
  value: String(rule.value),
  unsettled: rule.unsettled !== undefined,
  fromMemory: rule.confidence === "memory",
});

const toFigure = (rule: Rule) =>
  figure(
    Number(rule.value),
    rule.unit,
    "-",
    { readOn: rule.readOn },
    rule.confidence === "memory" ? "from memory" : "declared",
    rule.id,
  );

/** What a rule's case looks at, from the description and what is carried. */
export function caseFacts(input: CountriesInput): CaseFacts {
  const { masses, dimensions, category } = input.vehicle;
  return {
    mamKg: masses.mamKg,
    technicalMaxKg: masses.technicalMaxKg,
    unladenKg: masses.unladenKg ?? null,
    category,
    heightM: dimensions.heightM,
    overhang: input.overhang,
    plateLacksUk: input.plateShowsUk !== true,
  };
}

/** The rules of a topic in a country that hold on a day for this vehicle. */
export function countryRules(topic: string, country: string, on: IsoDate, facts: CaseFacts): readonly Rule[] {
  const prefix = `${topic}.${country.toLowerCase()}`;
  const ids = new Set(
    rulesInForce()
      .rules.filter(({ id }) => id === prefix || id.startsWith(`${prefix}.`))
      .map(({ id }) => id),
  );
  return [...ids].flatMap((id) => {
    const rule = ruleAt(id, on);
    return rule !== undefined && ruleApplies(rule.when, facts) ? [rule] : [];
  });
}

/** The card of one country of the route for this vehicle: limits by the right mass, kit, zone, tolls, nights, fillers, alcohol. */
export function countryCard(input: CountriesInput, stay: CountriesInput["route"][number]): CountryCard {
  const facts = caseFacts(input);
  const { country, enter, leave } = stay;
  const rules = (topic: string) => countryRules(topic, country, enter, facts);
  const one = (topic: string) => rules(topic)[0] ?? null;
  const [zone, night, filler] = [one("zone"), one("night"), one("lpgFiller")];
  return {
    country,
    enter,
    leave,
    known: COUNTRIES_KNOWN.includes(country),
    speeds: speeds(rules("speed")),
    kit: rules("kit").map((rule) => kitLine(rule, input)),
    zone: zone === null ? null : line(zone),
    tolls: rules("toll").map(line),
    night: night === null ? null : line(night),
    lpgFiller:
      filler === null || !isRefillable(input)
        ? null
        : { ...line(filler), adaptors: String(filler.value).split(",") },
    alcohol: alcohol(rules("alcohol")),
  };
}

/** A rule for a case (above a mass, a category) goes before the one for all. */
function speeds(rules: readonly Rule[]): CountryCard["speeds"] {
  return ROADS.flatMap((road) => {
    const all = rules.filter(({ id }) => id.endsWith(`.${road}`));
    const rule = all.find(({ when }) => when !== undefined) ?? all[0];
    return rule === undefined ? [] : [{ road, limit: toFigure(rule), line: line(rule) }];
  });
}

function kitLine(rule: Rule, input: CountriesInput): CountryCard["kit"][number] {
  const thing = rule.id.split(".")[2] ?? "";
  return { ...line(rule), thing, aboard: input.kitAboard.includes(thing) };
}

function alcohol(rules: readonly Rule[]): CountryCard["alcohol"] {
  const by = (end: string) => rules.find(({ id }) => id.endsWith(end));
  const [limit, novice] = [by(".limit"), by(".novice")];
  return limit === undefined
    ? null
    : { limit: toFigure(limit), novice: novice === undefined ? null : toFigure(novice) };
}

/** Whether gas is filled at a pump, so that adaptors are needed. */
export const isRefillable = (input: Pick<CountriesInput, "vehicle">) =>
  specsOf(input.vehicle, "lpg").some(({ arrangement }) => arrangement !== "exchange");
