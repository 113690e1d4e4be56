import { figure } from "../../base/figure.ts";
import type { IsoDate } from "../../base/time.ts";
import { COUNTRIES_KNOWN } from "../../rules/country-rules.ts";
import type { Rule } from "../../rules/rule.ts";
import { type CaseFacts, isRuleFor } from "../../rules/rule-applies.ts";
import { daysOfChange, rulesDuring } from "../../rules/rule-at.ts";
import { rulesInForce } from "../../rules/rule-book.ts";
import { specsOf } from "../../vehicle/specs-of.ts";
import type { CardLine, CountriesInput, CountryCard, WinterLine } from "./abroad-types.ts";
import { ROADS } from "./abroad-types.ts";
import { caseFacts } from "./case-facts.ts";
import { isUsual, winterDuties } from "./winter-duties.ts";

interface Stay {
  readonly enter: IsoDate;
  readonly leave: IsoDate;
}

/** A line of the card; what the rule turns on and this description does not say is named. */
const line = (rule: Rule, { enter, leave }: Stay, unladenKg: number | null = 0): CardLine => ({
  ruleId: rule.id,
  value: String(rule.value),
  unsettled: rule.unsettled !== undefined,
  fromMemory: rule.confidence === "memory",
  note: rule.note ?? null,
  changesOn: daysOfChange(rule.id, enter, leave)[1] ?? null,
  notChecked: [
    ...(rule.notChecked ?? []),
    ...(rule.when?.mass === "unladen" && unladenKg === null ? (["unladenMass"] as const) : []),
  ],
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

/** What a rule's case looks at, for a journey abroad. */
export const journeyFacts = ({ vehicle, overhang, plateShowsUk }: CountriesInput): CaseFacts =>
  caseFacts(vehicle, { overhang, plateLacksUk: plateShowsUk !== true });

/** Values of which the earlier asks for more. */
const STRICTEST_FIRST = [
  "required",
  "certificate",
  "sticker",
  "register",
  "buyBefore",
  "forbidden",
  "advised",
];

/** Of versions that hold one after the other, the one that asks for most: a lower figure, or more to have or to get. */
function strictest(versions: readonly Rule[]): Rule | undefined {
  const rank = ({ value }: Rule) => {
    if (typeof value === "number") return value;
    const at = STRICTEST_FIRST.indexOf(String(value));
    return at === -1 ? STRICTEST_FIRST.length : at;
  };
  return [...versions].sort((a, b) => rank(a) - rank(b))[0];
}

/** Every version of the rules of a topic in a country that is for this vehicle on a day of a stay, by id. */
export function ruleVersions(
  topic: string,
  country: string,
  stay: Stay,
  facts: CaseFacts,
): readonly (readonly Rule[])[] {
  const prefix = `${topic}.${country.toLowerCase()}`;
  const ids = new Set(
    rulesInForce()
      .rules.filter(({ id }) => id === prefix || id.startsWith(`${prefix}.`))
      .map(({ id }) => id),
  );
  return [...ids].map((id) =>
    rulesDuring(id, stay.enter, stay.leave).filter((rule) => isRuleFor(rule, facts)),
  );
}

/**
 * The rules of a topic in a country for this vehicle, for the days of a stay. Of a rule that changes meanwhile the
 * stricter version: a limit that is kept throughout, a thing that is aboard throughout.
 */
const countryRules = (topic: string, country: string, stay: Stay, facts: CaseFacts): readonly Rule[] =>
  ruleVersions(topic, country, stay, facts).flatMap((versions) => strictest(versions) ?? []);

/** The card of one country of the route for this vehicle: limits by the right mass, kit, zone, tolls, nights, fillers, alcohol. */
export function countryCard(input: CountriesInput, stay: CountriesInput["route"][number]): CountryCard {
  const facts = journeyFacts(input);
  const { country, enter, leave } = stay;
  const rules = (topic: string) => countryRules(topic, country, stay, facts);
  // a rule for a case goes before the one for all
  const one = (topic: string) => {
    const all = rules(topic);
    return all.find(({ when }) => when !== undefined) ?? all[0] ?? null;
  };
  const [zone, night, filler] = [one("zone"), one("night"), one("lpgFiller")];
  return {
    country,
    enter,
    leave,
    known: COUNTRIES_KNOWN.includes(country),
    speeds: speeds(rules("speed"), stay, facts.unladenKg),
    kit: rules("kit").map((rule) => kitLine(rule, input, stay)),
    winter: winter(input, stay),
    zone: zone === null ? null : line(zone, stay),
    tolls: rules("toll").map((rule) => line(rule, stay)),
    night: night === null ? null : line(night, stay),
    lpgFiller:
      filler === null || !isRefillable(input)
        ? null
        : { ...line(filler, stay), adaptors: String(filler.value).split(",") },
    alcohol: alcohol(rules("alcohol"), stay),
  };
}

function signsOf({ binds }: Rule): WinterLine["roads"] {
  const roads = binds?.roads;
  return roads === "signed" || roads === "signedMountains" ? roads : null;
}

/** What binds only on wintry roads is left out where such roads are not usual on days of the stay. */
function winter({ vehicle }: CountriesInput, stay: CountriesInput["route"][number]): CountryCard["winter"] {
  const { country, enter, leave } = stay;
  return winterDuties({ vehicle, from: enter, to: leave, countries: [country], stays: [stay] })
    .filter((duty) => duty.rule.binds?.weather === undefined || isUsual(duty))
    .map(({ rule, thing }) => ({
      ...line(rule, stay),
      thing,
      wintryOnly: rule.binds?.weather !== undefined,
      roads: signsOf(rule),
    }));
}

/** A rule for a case (above a mass, a category) goes before the one for all. */
function speeds(rules: readonly Rule[], stay: Stay, unladenKg: number | null): CountryCard["speeds"] {
  return ROADS.flatMap((road) => {
    const all = rules.filter(({ id }) => id.endsWith(`.${road}`));
    const rule = all.find(({ when }) => when !== undefined) ?? all[0];
    return rule === undefined ? [] : [{ road, limit: toFigure(rule), line: line(rule, stay, unladenKg) }];
  });
}

function kitLine(rule: Rule, input: CountriesInput, stay: Stay): CountryCard["kit"][number] {
  const thing = rule.id.split(".")[2] ?? "";
  const has = (name: string) => input.kitAboard.includes(name);
  // who carries two triangles carries one
  return { ...line(rule, stay), thing, aboard: has(thing) || (thing === "triangle" && has("twoTriangles")) };
}

function alcohol(rules: readonly Rule[], stay: Stay): CountryCard["alcohol"] {
  const by = (end: string) => rules.find(({ id }) => id.endsWith(end));
  const [limit, novice] = [by(".limit"), by(".novice")];
  return limit === undefined
    ? null
    : {
        limit: toFigure(limit),
        novice: novice === undefined ? null : toFigure(novice),
        line: line(limit, stay),
      };
}

/** Whether gas is filled at a pump, so that adaptors are needed. */
export const isRefillable = (input: Pick<CountriesInput, "vehicle">) =>
  specsOf(input.vehicle, "lpg").some(({ arrangement }) => arrangement !== "exchange");
