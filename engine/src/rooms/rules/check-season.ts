import { figure } from "../../base/figure.ts";
import type { Finding } from "../../base/finding.ts";
import { type IsoDate, Temporal } from "../../base/time.ts";
import type { Rule } from "../../rules/rule.ts";
import { rulesDuring } from "../../rules/rule-at.ts";
import { rulesInForce } from "../../rules/rule-book.ts";
import { specsOf } from "../../vehicle/specs-of.ts";
import { makeFinding } from "../make-finding.ts";
import type { CheckSeason, SeasonInput } from "./types.ts";

/** from memory: the frost valve of a water heater opens at 3 °C or a little above */
const FROST_C = 3;
/** from memory: butane gives too little gas below about this */
const BUTANE_C = 2;

/** Winter tyres by country and date, frost, and gas that does not boil in the cold. */
export const checkSeason: CheckSeason = (input) => {
  const [first, last] = [input.from.slice(0, 10), input.to.slice(0, 10)];
  const winterIds = rulesInForce()
    .rules.filter(({ id, country }) => id.includes(".winterTyres") && input.countries.includes(country))
    .map(({ id }) => id);
  const winterRules = [...new Set(winterIds)].flatMap((id) => winterRule(input, id) ?? []);
  const cold = input.coldestNightC;
  const frost =
    cold === undefined
      ? rulesDuring("season.gb.frost", first, last).some((rule) => spanOfRuleMeets(rule, first, last))
      : cold <= FROST_C;
  const findings = [
    ...winterRules.flatMap((rule) => tyres(input, rule)),
    ...(frost ? [frostFinding(input)] : []),
    ...butane(input),
  ];
  return { result: { winter: winterRules.length > 0, frost }, findings };
};

/** The version of a winter rule that meets a day on which the vehicle is in its country; undefined where none does. */
function winterRule(input: SeasonInput, id: string): Rule | undefined {
  const whole = { enter: input.from.slice(0, 10), leave: input.to.slice(0, 10) };
  return rulesDuring(id, whole.enter, whole.leave).find((rule) => {
    const stays = input.stays?.filter(({ country }) => country === rule.country) ?? [];
    return (stays.length === 0 ? [whole] : stays).some(({ enter, leave }) =>
      spanOfRuleMeets(rule, enter, leave),
    );
  });
}

/** The span of a rule on those days alone on which the rule itself holds. */
function spanOfRuleMeets({ value, validFrom, validTo }: Rule, enter: IsoDate, leave: IsoDate): boolean {
  const [, first = enter] = [enter, validFrom].sort();
  const [last = leave] = [leave, validTo ?? leave].sort();
  return spanMeets(String(value), first, last);
}

/** Whether any day from `first` to `last` lies in a yearly span `MM-DD/MM-DD`, ends included; it may cross the new year. */
export function spanMeets(span: string, first: IsoDate, last: IsoDate): boolean {
  const [start = "", end = ""] = span.split("/");
  const end_ = Temporal.PlainDate.from(last);
  for (
    let day = Temporal.PlainDate.from(first);
    Temporal.PlainDate.compare(day, end_) <= 0;
    day = day.add({ days: 1 })
  ) {
    const monthDay = day.toString().slice(5);
    if (start <= end ? monthDay >= start && monthDay <= end : monthDay >= start || monthDay <= end)
      return true;
  }
  return false;
}

function tyres(input: SeasonInput, rule: Rule): Finding[] {
  const fitted = specsOf(input.vehicle, "tyres")[0]?.season;
  const worn = input.winterTyres === true ? "winter" : input.winterTyres === false ? "summer" : fitted;
  const more = {
    about: rule.country,
    facts: { country: rule.country },
    sources: [rule.id],
    mends: ["season.fitWinterTyres"],
  };
  if (worn === "winter") return [];
  if (rule.id.endsWith("OrChains") && input.snowChains === true) return [];
  if (worn === undefined) return [makeFinding("season", "season.tyresUnknown", "unchecked", "law", more)];
  if (worn === "allSeason")
    return [
      makeFinding("season", "season.seeSnowflake", "condition", "law", {
        ...more,
        mends: ["season.seeSnowflake"],
      }),
    ];
  return [makeFinding("season", "season.winterTyres", "refuse", "law", more)];
}

function frostFinding(input: SeasonInput): Finding {
  const cold = input.coldestNightC;
  if (cold === undefined)
    return makeFinding("season", "season.frostPossible", "note", "policy", {
      sources: ["season.gb.frost"],
      mends: ["season.drain"],
    });
  const coldest = figure(cold, "°C", "-", {}, "declared");
  return makeFinding("season", "season.frost", "condition", "policy", {
    facts: { coldest },
    mends: ["season.drain"],
  });
}

function butane(input: SeasonInput): Finding[] {
  const cold = input.coldestNightC;
  if (
    cold === undefined ||
    cold > BUTANE_C ||
    specsOf(input.vehicle, "lpg").every(({ fuel }) => fuel !== "butane")
  )
    return [];
  const facts = { coldest: figure(cold, "°C", "-", {}, "declared") };
  return [makeFinding("season", "season.butane", "refuse", "policy", { facts, mends: ["season.propane"] })];
}
