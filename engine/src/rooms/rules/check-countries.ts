import type { Finding } from "../../base/finding.ts";
import { addDays, monthsAfter } from "../../base/years.ts";
import type { Rule } from "../../rules/rule.ts";
import { ruleAt, ruleFigure } from "../../rules/rule-at.ts";
import { makeFinding } from "../make-finding.ts";
import type { AbroadTask, CardLine, CheckCountries, CountriesInput, CountryCard } from "./abroad-types.ts";
import { countryCard, journeyFacts, ruleVersions } from "./country-card.ts";

/** Values of a zone or toll rule that ask for something before the border. */
const TO_GET = ["certificate", "sticker", "register", "buyBefore"];

/**
 * The countries of the route in their order: a card for each (limits by the mass that the country's rule names,
 * kit, zones, tolls, nights, fillers, alcohol), what must be got and by when, and what still stops the hire at
 * the gate of countries. Compulsory kit and papers are law. What the sources leave unsettled stays a note.
 */
export const checkCountries: CheckCountries = (input) => {
  const cards = input.route.map((stay) => countryCard(input, stay));
  const abroad = cards.filter(({ country }) => country !== input.home);
  const tasks = abroad.flatMap((card) => toGet(input, card));
  return {
    result: { cards, tasks },
    findings: [
      ...abroad.flatMap(unknown),
      ...(abroad.length > 0 ? papers(input, abroad) : []),
      ...kit(abroad),
      ...tasks.flatMap(open),
      ...adaptors(input, abroad),
      ...abroad.flatMap(unsettled),
      ...abroad.flatMap(notChecked),
    ],
  };
};

function unknown({ country, known }: CountryCard): Finding[] {
  return known
    ? []
    : [
        makeFinding("countries", "countries.notInData", "unchecked", "law", {
          about: country,
          facts: { country },
          mends: ["countries.askLocally"],
        }),
      ];
}

/** The certificate or the original registration document, for every day abroad. */
function papers({ papers: seen }: CountriesInput, abroad: readonly CountryCard[]): Finding[] {
  if (seen.originalDocument === true) return [];
  const first = abroad.map(({ enter }) => enter).sort()[0] ?? "";
  const last =
    abroad
      .map(({ leave }) => leave)
      .sort()
      .at(-1) ?? "";
  const lead = ruleAt("paper.gb.foreignDays", first)?.leadDays ?? 0;
  const sources = ["paper.gb.foreignDays", "paper.gb.certificateMonths"];
  if (seen.certificate === undefined) {
    const facts = { doBy: addDays(first, -lead) };
    return [
      makeFinding("countries", "countries.noPaper", "unchecked", "law", {
        facts,
        sources,
        mends: ["countries.orderCertificate", "countries.takeOriginal"],
      }),
    ];
  }
  const { validFrom, validTo } = seen.certificate;
  const months = ruleFigure("paper.gb.certificateMonths", first);
  if (validTo > monthsAfter(validFrom, months.value))
    return [
      makeFinding("countries", "countries.paperTooLong", "unchecked", "law", {
        facts: { validFrom, validTo, months: months.value },
        sources,
        mends: ["countries.readCertificate"],
      }),
    ];
  if (validFrom <= first && validTo >= last) return [];
  return [
    makeFinding("countries", "countries.paperLapses", "refuse", "law", {
      facts: { validFrom, validTo, first, last },
      sources,
      mends: ["countries.orderCertificate", "countries.takeOriginal"],
    }),
  ];
}

/** Each compulsory thing that nobody has seen aboard, once, with the countries that ask for it. */
function kit(cards: readonly CountryCard[]): Finding[] {
  const asked = new Map<string, { countries: string[]; sources: string[] }>();
  for (const { country, kit: lines } of cards) {
    for (const { thing, value, aboard, ruleId } of lines) {
      if (value !== "required" || aboard) continue;
      const entry = asked.get(thing) ?? { countries: [], sources: [] };
      if (!entry.countries.includes(country)) entry.countries.push(country);
      entry.sources.push(ruleId);
      asked.set(thing, entry);
    }
  }
  return [...asked].map(([thing, { countries, sources }]) =>
    makeFinding("countries", "countries.kit", "unchecked", "law", {
      about: thing,
      facts: { thing, countries: countries.join(", ") },
      sources,
      mends: ["countries.putAboard"],
    }),
  );
}

/** What is to be got for a country, each thing once. */
function toGet(input: CountriesInput, card: CountryCard): AbroadTask[] {
  const facts = journeyFacts(input);
  const asked = (topic: string, asks: (rule: Rule) => boolean) =>
    ruleVersions(topic, card.country, card, facts).map((versions) => versions.filter(asks));
  const isToGet = ({ value }: Rule) => TO_GET.includes(String(value));
  return [
    ...asked("zone", isToGet),
    ...asked("toll", isToGet),
    ...asked("kit", ({ leadDays, value }) => leadDays !== undefined && value === "required"),
  ].flatMap((versions) => taskOf(input, card, versions) ?? []);
}

/** By the earliest day that any version asks for: one that begins during the stay is met from its first day on. */
function taskOf(
  input: CountriesInput,
  { country, enter }: CountryCard,
  versions: readonly Rule[],
): AbroadTask | undefined {
  const [first] = versions
    .map((rule) => {
      const leadDays = rule.leadDays ?? 0;
      const from = rule.validFrom > enter ? rule.validFrom : enter;
      return { rule, leadDays, doBy: addDays(from, -leadDays) };
    })
    .sort((a, b) => (a.doBy < b.doBy ? -1 : 1));
  if (first === undefined) return undefined;
  const { rule, leadDays, doBy } = first;
  const done = input.got.includes(rule.id);
  const avoidable = avoidableOf(rule);
  const avoided = avoidable !== null && (input.avoided ?? []).includes(rule.id);
  return {
    ruleId: rule.id,
    country,
    doBy,
    leadDays,
    done,
    avoidable,
    avoided,
    late: !done && !avoided && doBy < input.today,
  };
}

function avoidableOf({ binds }: Rule): AbroadTask["avoidable"] {
  const roads = binds?.roads;
  return roads === "zones" || roads === "motorways" ? roads : null;
}

/** What is not got yet; what the route keeps out of goes as a condition, printed and signed. */
function open(task: AbroadTask): Finding[] {
  if (task.done || task.ruleId.startsWith("kit.")) return [];
  const { country, doBy, ruleId, avoidable } = task;
  const item = ruleId.replaceAll(".", "_");
  if (task.avoided)
    return [
      makeFinding("countries", "countries.keepsOut", "condition", "law", {
        about: ruleId,
        facts: { country, item, of: avoidable ?? "" },
        sources: [ruleId],
        mends: ["countries.getIt"],
      }),
    ];
  return [
    makeFinding("countries", task.late ? "countries.toGetLate" : "countries.toGet", "unchecked", "law", {
      about: ruleId,
      facts: { country, doBy, item, leadDays: task.leadDays },
      sources: [ruleId],
      mends: ["countries.getIt", ...(avoidable === null ? [] : ["countries.keepOut"])],
    }),
  ];
}

function adaptors(input: CountriesInput, abroad: readonly CountryCard[]): Finding[] {
  const needed = abroad.flatMap(({ lpgFiller }) => lpgFiller?.adaptors ?? []);
  return [...new Set(needed)]
    .filter((adaptor) => !input.kitAboard.includes(`adaptor.${adaptor}`))
    .map((adaptor) =>
      makeFinding("countries", "countries.adaptor", "unchecked", "policy", {
        about: `adaptor.${adaptor}`,
        facts: { adaptor },
        sources: abroad.flatMap(({ lpgFiller }) => (lpgFiller ? [lpgFiller.ruleId] : [])),
        mends: ["countries.putAboard"],
      }),
    );
}

/** Each line of a card that rests on a rule. */
function linesOf({ kit: lines, zone, night, tolls, speeds, lpgFiller, winter }: CountryCard): CardLine[] {
  const maybe = [zone, night, lpgFiller].filter((each) => each !== null);
  return [...lines, ...tolls, ...speeds.map((each) => each.line), ...winter, ...maybe];
}

/** One note for each thing that a country's rules turn on and no description says. */
function notChecked(card: CountryCard): Finding[] {
  const lines = linesOf(card);
  // the gate of the season asks for what a tyre turns on
  const facts = [...new Set(lines.flatMap((each) => each.notChecked))].filter(
    (fact) => fact !== "speedIndex",
  );
  return facts.map((fact) =>
    makeFinding("countries", "countries.factNotChecked", "note", "law", {
      about: `${card.country} ${fact}`,
      facts: { country: card.country, fact },
      sources: lines.filter((each) => each.notChecked.includes(fact)).map(({ ruleId }) => ruleId),
      mends: ["countries.seeDocument"],
    }),
  );
}

/** One note a country on what its sources leave open. */
function unsettled(card: CountryCard): Finding[] {
  const { country } = card;
  const ids = linesOf(card).flatMap((each) => (each.unsettled ? [each.ruleId] : []));
  return ids.length === 0
    ? []
    : [
        makeFinding("countries", "countries.unsettled", "note", "law", {
          about: country,
          facts: { country, count: ids.length },
          sources: ids,
          mends: ["countries.askLocally"],
        }),
      ];
}
