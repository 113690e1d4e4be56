import { spanText } from "@setfair/words/guide";
import type { Schemas } from "../../api/client.ts";
import { dateText, figureText, has, say, t, words } from "../../parts/words.ts";

export type RuleLine = Schemas["RuleLine"];
export type Rule = Schemas["Rule"];

const BY_COUNTRY: readonly string[] = ["speed", "kit", "zone", "toll", "night", "lpgFiller", "alcohol"];

export const countryName = (country: string): string =>
  country === "EU" ? t("rules.europe") : t("country.name", { country });
export const topicName = (topic: string): string =>
  has(`rules.topic.${topic}`) ? say(`rules.topic.${topic}`) : topic;

/** A rule in words: a name of its own, or its topic and the thing in it; its id where neither is written. */
export function ruleName(id: string): string {
  if (has(`rules.name.${id}`)) return say(`rules.name.${id}`);
  const [topic = "", , ...rest] = id.split(".");
  if (!BY_COUNTRY.includes(topic)) return id;
  const part = rest.join(".");
  if (part === "") return topicName(topic);
  if (topic === "kit") return t("country.thing", { thing: part });
  return has(`rules.part.${part}`) ? `${topicName(topic)}, ${say(`rules.part.${part}`)}` : id;
}

/** Years, months and days are written out. */
function countText(value: number, unit: string): string {
  if (unit === "a") return t("rules.years", { n: value });
  if (unit === "d") return t("rules.days", { n: value });
  if (unit === "month" || unit === "months") return t("rules.months", { n: value });
  return figureText({ value, unit });
}

/** The value of a rule in words and units. */
export function valueText(id: string, value: Rule["value"], unit: string): string {
  const topic = id.split(".")[0];
  if (typeof value === "boolean") return t(value ? "rules.yes" : "rules.no");
  if (typeof value === "number") return countText(value, unit);
  if (unit === "MM-DD/MM-DD") return spanText(words(), value);
  if (unit === "date") return dateText(value, "short");
  if (topic === "kit") return t("country.kit.value", { value });
  if (topic === "zone") return t("country.zone", { value });
  if (topic === "toll") return t("country.toll", { value });
  if (topic === "night") return t("country.night", { value });
  if (topic === "lpgFiller")
    return value
      .split(",")
      .map((adaptor) => t("country.adaptor", { adaptor }))
      .join(", ");
  return value.replaceAll(",", ", ");
}

export const readText = ({ confidence, readOn }: Pick<Rule, "confidence" | "readOn">): string =>
  t("rules.readOn", { how: confidence, on: dateText(readOn, "short") });

export const holdsText = ({ validFrom, validTo }: Pick<Rule, "validFrom" | "validTo">): string =>
  validTo === undefined
    ? t("rules.from", { from: dateText(validFrom, "short") })
    : t("rules.fromTo", { from: dateText(validFrom, "short"), to: dateText(validTo, "short") });

/** For which vehicles a rule holds and what must be so besides the day, a line each; none where it holds for all. */
export function caseTexts(rule: Pick<Rule, "when" | "binds" | "notChecked">): string[] {
  const { when, notChecked } = rule;
  const facts = (notChecked ?? []).map((fact) => t("abroad.fact", { fact })).join(", ");
  return [
    ...(when === undefined ? [] : whenTexts(when)),
    ...bindsTexts(rule),
    ...(facts === "" ? [] : [t("rules.notChecked", { facts })]),
  ];
}

/** What must be so on the road besides the day. */
export const bindsTexts = ({ binds }: Pick<Rule, "binds">): string[] => [
  ...(binds?.weather === undefined ? [] : [t(`rules.binds.${binds.weather}`)]),
  ...(binds?.roads === undefined ? [] : [t(`rules.binds.${binds.roads}`)]),
];

function whenTexts(when: NonNullable<Rule["when"]>): string[] {
  const kg = (value: number | undefined) =>
    value === undefined ? "none" : figureText({ value, unit: "kg" });
  const { mass, registeredFrom, registeredBefore, aboveKg, toKg, ...others } = when;
  return [
    ...(mass === undefined ? [] : [t("rules.when", { mass, above: kg(aboveKg), to: kg(toKg) })]),
    ...(registeredFrom === undefined ? [] : [t("rules.when.registeredFrom", { on: registeredFrom })]),
    ...(registeredBefore === undefined ? [] : [t("rules.when.registeredBefore", { on: registeredBefore })]),
    ...(mass === undefined && Object.keys(others).length > 0 ? [t("rules.when.other")] : []),
  ];
}
